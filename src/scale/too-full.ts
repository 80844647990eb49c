import {plainly} from './holding.js'
import type {Filled} from './order.js'
import {kilograms} from './reason-figures.js'
import type {Say} from './sizing.js'
import {isSheet} from './vessel.js'

/** More on a sheet than this many times what the receipt or its kind puts there is crowded. Common practice, no source. */
const crowded = 1.5

/** What fills a vessel as usual is known no better. Common practice, no source. */
const amply = 1.15

/** What a vessel takes at the most is known no better. Common practice, no source. */
const slightly = 0.05

/** Where more is to go into a vessel than it takes (`scale-full`): into so many as the day says, or into each as the receipt comes out. */
export function sayTooFull(filled: Filled, say: Say): void {
  const {item, asked, vessels, order, each, vessel} = filled
  const {among} = asked
  const {receipt, mass, made, shape, most} = vessels
  if (mass === null) return
  const bears = isSheet(shape.size) ? crowded * Math.max(made.each, made.usual) : most
  if (among !== undefined && each > bears * (1 + slightly)) {
    say(
      'warning',
      'scale-full',
      `“${receipt.title}” comes to ${kilograms(each)} in each ${vessel.name}, which takes ${kilograms(bears)} at the most`,
      `write “in ${Math.ceil((order.count * each) / bears - 1e-9)} ${vessel.name}” or more, or ask for less`,
      item.amountAt?.[among.word],
    )
    return
  }
  if (allInOne(filled)) {
    say(
      'warning',
      'scale-full',
      `“${receipt.title}” bakes in “${receipt.several!.text.replace(/\s+/g, ' ')}” and does not say how many: planned in one, with ${Math.round((100 * each) / made.usual)} % of what fills it`,
      'write in the receipt how many, such as “two tins”',
    )
    return
  }
  // In smaller vessels that the day names it is more of them by its volume, and none of them too full.
  const yielded =
    made.pieces !== null &&
    made.pieces < made.vessels &&
    mass.likely > made.pieces * most * (1 + slightly) &&
    !isSheet(shape.size)
  if (!yielded && each <= plainly * most) return
  say(
    'warning',
    'scale-full',
    yielded
      ? `“${receipt.title}” makes ${made.pieces} of ${kilograms(mass.likely)}, and ${shape.name} takes ${kilograms(most)} at the most; planned in ${made.vessels} of them`
      : `“${receipt.title}” comes to ${kilograms(each)} in each ${shape.name}, which takes ${kilograms(most)} at the most`,
    'state a larger vessel in the receipt’s front matter, or in its text how many it makes',
  )
}

/** Whether one thing is made in several vessels that nothing counts, and is more than fills one. */
function allInOne({vessels: {receipt, made, shape, other}, order, each}: Filled): boolean {
  const one = made.vessels === 1 && made.pieces === null && receipt.serves !== null && order.times.equals(order.count)
  return receipt.several !== undefined && one && other === null && !isSheet(shape.size) && each > amply * made.usual
}
