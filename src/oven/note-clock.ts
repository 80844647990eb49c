/** Times of day as a note tells them. */

/** "2:15 pm" of minutes after midnight, with "next day" before it where it is. */
export function clockText(minutes: number): string {
  const days = Math.floor(minutes / 1440)
  const m = Math.round(minutes - days * 1440)
  const hour = Math.floor(m / 60)
  const text = `${hour % 12 === 0 ? 12 : hour % 12}:${String(m % 60).padStart(2, '0')} ${hour < 12 ? 'am' : 'pm'}`
  return days > 0 ? `next day ${text}` : days < 0 ? `evening before ${text}` : text
}
