import Fraction from 'fraction.js'

/**
 * An exact amount: a reduced fraction of two safe integers. Reading makes and compares tens of thousands of them, so those are done
 * on plain numbers; sums and products go through fraction.js.
 */
export class Exact {
  readonly value: number

  private constructor(
    readonly num: number,
    readonly den: number,
  ) {
    this.value = num / den
  }

  private static readonly whole: Exact[] = Array.from({length: 101}, (_, n) => new Exact(n, 1))

  /** `num / den`, reduced. Both whole, `den` above zero. */
  static of(num: number, den = 1): Exact {
    if (den === 1) return Exact.whole[num] ?? new Exact(num, 1)
    let a = num
    let b = den
    while (b !== 0) {
      const rest = a % b
      a = b
      b = rest
    }
    return a === den ? Exact.of(num / den) : new Exact(num / a, den / a)
  }

  private static from(fraction: Fraction): Exact {
    return Exact.of(Number(fraction.s * fraction.n), Number(fraction.d))
  }

  private fraction(): Fraction {
    return new Fraction(this.num, this.den)
  }

  times(other: Exact): Exact {
    if (other.value === 1) return this
    return this.value === 1 ? other : Exact.from(this.fraction().mul(other.fraction()))
  }

  plus(other: Exact): Exact {
    return Exact.from(this.fraction().add(other.fraction()))
  }

  equals(other: Exact): boolean {
    return this.num === other.num && this.den === other.den
  }

  /** `n/d`, or the number alone where it is whole. */
  toString(): string {
    return this.den === 1 ? `${this.num}` : `${this.num}/${this.den}`
  }
}

export const ONE = Exact.of(1)
export const TWO = Exact.of(2)
export const HALF = Exact.of(1, 2)
