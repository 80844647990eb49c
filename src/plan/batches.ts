/** A dish's title without the batch at its end: “Scones (1/2)” and “Scones (2/2)” are both “Scones”. */
export function withoutBatch(title: string): string {
  return title.replace(/ \(\d+\/\d+\)$/, '')
}
