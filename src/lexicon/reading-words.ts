import {words} from './row.js'
import type {ReadingWord} from './schema.js'

const row = (kind: ReadingWord['kind'], id: string, list: string): ReadingWord => ({
  id: `${kind}: ${id}`,
  kind,
  words: words(list),
  source: 'common-practice',
})

/** What cooks call a reading besides its kind's own name, in small letters, English and German. `src/oven/signs.ts` reads them. */
export const readingWords: readonly ReadingWord[] = [
  row('floor', 'hearth', 'hearth, sole, ir'),
  row('floor', 'herd', 'herd, herdboden, herdfläche, backfläche'),
  row('vault', 'dome', 'dome, crown, roof, arch'),
  row('vault', 'gewölbe', 'gewölbe, ofengewölbe, kuppel'),
  row('air', 'oven', 'oven, thermometer'),
  row('air', 'ofenluft', 'ofenluft'),
  row('probe', 'thermocouple', 'thermocouple'),
  row('probe', 'fühler', 'fühler, messfühler'),
  row('arm', 'count', 'count, hand'),
  row('arm', 'armprobe', 'armprobe'),
  row('flour', 'mehl', 'mehl, mehlprobe'),
  row('paper', 'papier', 'papier, papierprobe'),
  row('walls', 'wall', 'wall'),
  row('walls', 'wände', 'wände, ofenwände'),
  row('spatter', 'water', 'water, drops'),
  row('spatter', 'tropfen', 'tropfen, wassertropfen'),
]
