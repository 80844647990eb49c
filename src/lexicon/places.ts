import {words} from './row.js'
import type {Place} from './schema.js'

/** Words of a `place:` line that say whose measures a receipt is written in. Lower case. */
export interface PlaceRow {
  readonly place: Place
  readonly words: readonly string[]
  /** Countries by their codes of two letters (ISO 3166-1), where nothing else stands on the line: “at” and “it” are words as well. */
  readonly codes?: readonly string[]
}

export const places: readonly PlaceRow[] = [
  {
    place: 'us',
    words: words(
      'us, usa, u s, u s a, united states, america, american, new england, massachusetts, boston, connecticut, hartford, new haven, new york, albany, philadelphia, pennsylvania, virginia, richmond, williamsburg, maryland, baltimore, maine, portland, vermont, new hampshire, rhode island, providence, new jersey, ohio, cincinnati, kentucky, carolina, charleston, georgia, savannah, louisiana, new orleans, california, san francisco, illinois, chicago, indiana, michigan, wisconsin, minnesota, missouri, iowa, texas, kansas, tennessee, alabama, mississippi, washington, delaware, oregon, northampton massachusetts, plymouth massachusetts',
    ),
  },
  {
    place: 'uk',
    words: words(
      'uk, gb, u k, g b, great britain, britain, british, england, english, scotland, scottish, wales, welsh, ireland, irish, london, edinburgh, glasgow, dublin, york, yorkshire, lancashire, manchester, devon, devonshire, cornwall, kent, norfolk, suffolk, essex, sussex, surrey, somerset, bath, bristol, oxford, cambridge, lincolnshire, leicestershire, derbyshire, northumberland, newcastle, cumberland, westmorland, cheshire, shropshire, durham, liverpool, birmingham, bakewell, hampshire, wiltshire, dorset, worcestershire, gloucestershire, hereford, herefordshire, norwich, exeter',
    ),
  },
  {
    place: 'au',
    words: words(
      'au, australia, australian, sydney, melbourne, new south wales, victoria, queensland, tasmania, adelaide, perth, brisbane',
    ),
  },
  {
    place: 'eu',
    words: words(
      'eu, europe, france, germany, italy, spain, austria, netherlands, holland, belgium, denmark, sweden, norway, finland, poland, switzerland, paris, berlin, vienna, portugal, deutschland, österreich, schweiz, frankreich, italien, spanien, niederlande, belgien, dänemark, schweden, norwegen, finnland, polen, wien, hamburg, münchen, zürich',
    ),
    codes: words('de, at, ch, fr, it, es, nl, be, lu, dk, se, no, fi, pl, pt, cz'),
  },
]
