/** A title in small letters and hyphens: the first part of its dishes’ ids. Stands apart from `dishes.ts`, so that what draws a plan needs no table. */
export function slug(title: string): string {
  const plain = title
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/['’]/g, '')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '')
  return plain === '' ? 'dish' : plain
}
