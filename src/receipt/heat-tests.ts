import type {HeatReadings} from './heat-readings.js'
import {COVERS, OVENS, TEST_ACTS, TESTS} from './heat-words.js'

/**
 * Tests of the oven that receipts write down: flour or paper that browns, a hand held in.
 */

/** The test at token `i` ("flour", "paper", "hand"), where a sentence near it tries the oven. */
export function readTest(readings: HeatReadings, i: number): void {
  const tokens = readings.tokens
  const thing = readings.word(i)
  const block = tokens[i]!.block
  let oven = false
  let acts = -1
  let plain = false
  for (let k = i; k >= 0 && i - k < 22 && tokens[k]!.block === block; k--) {
    const word = readings.word(k)
    if (OVENS.has(word) || word === 'hearth') oven = true
    if (TEST_ACTS.has(word) && i - k < 9 && acts < 0) acts = k
    if (word === 'white' || word === 'writing' || word === 'note' || word === 'letter') plain = true
  }
  if (acts < 0) return
  for (let k = i; k < tokens.length && k - i < 30 && tokens[k]!.block === block; k++) if (OVENS.has(readings.word(k))) oven = true
  if (!oven) return
  if (thing === 'paper' && (!plain || readings.near(i, 10, 8, COVERS))) return
  let quick = false
  for (let k = i + 1; k < tokens.length && k - i < 34 && tokens[k]!.block === block; k++) {
    const word = readings.word(k)
    if (/^(?:directly|once|immediately|instantly|quickly)$/.test(word)) quick = true
    if (thing === 'hand' || thing === 'arm') {
      if (word === 'count' || word === 'counting' || word === 'seconds') {
        let end = k + 1
        while (end < tokens.length && end < k + 3 && tokens[end]!.kind !== 'mark' && tokens[end]!.block === block) end++
        readings.put(acts, end, [TESTS.get('test-hand')!], null, 2, ['a test written in the receipt'])
        return
      }
      continue
    }
    const before = readings.word(k - 1)
    let id: string | null = null
    if (/^(?:blackens?|black|blazes?|fire)$/.test(word)) id = 'test-black'
    else if (/^(?:burns?|scorche?s?)$/.test(word)) id = 'test-black'
    else if (/^browns?$|^browned$/.test(word))
      id =
        before === 'dark'
          ? 'test-dark-brown'
          : before === 'light' || before === 'delicate' || before === 'golden'
            ? 'test-golden'
            : quick && thing !== 'paper'
              ? 'test-dark-brown'
              : 'test-brown'
    else if (/^(?:golden|gold)$/.test(word)) id = 'test-golden'
    else if (/^yellow$/.test(word)) id = 'test-pale'
    if (id !== null && /^(?:without|not)$/.test(before)) continue
    if (id !== null) {
      readings.put(acts, k + 1, [TESTS.get(id)!], null, 2, ['a test written in the receipt'])
      return
    }
  }
}
