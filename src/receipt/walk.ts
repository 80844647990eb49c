import {isStop} from './heat-words.js'
import type {Section, Token} from './section.js'

/** A reader's way about the tokens of a section: words by their place, and the bounds of the sentence they stand in. */
export abstract class Walk {
  readonly tokens: readonly Token[]

  constructor(readonly section: Section) {
    this.tokens = section.tokens
  }

  /** Where the sentence or block that holds token `i` ends, no further than `reach` tokens on. */
  limit(i: number, reach: number): number {
    const block = this.tokens[i]!.block
    let j = i
    while (j < this.tokens.length && j < i + reach && this.tokens[j]!.block === block && !isStop(this.tokens[j])) j++
    return j
  }

  /** Where the sentence or block that holds token `i` begins, no further than `reach` tokens back. */
  floor(i: number, reach: number): number {
    const block = this.tokens[i]!.block
    let j = i
    while (j > 0 && j > i - reach && this.tokens[j - 1]!.block === block && !isStop(this.tokens[j - 1])) j--
    return j
  }

  /** Does one of the wanted words stand in the sentence, so many tokens before or after token `i`? */
  near(i: number, before: number, after: number, wanted: ReadonlySet<string>): boolean {
    const low = this.floor(i, before)
    const high = this.limit(i, after)
    for (let j = low; j < high; j++) if (j !== i && wanted.has(this.tokens[j]!.word)) return true
    return false
  }

  /** The word of token `i`; '' past either end. */
  word(i: number): string {
    return this.tokens[i]?.word ?? ''
  }
}
