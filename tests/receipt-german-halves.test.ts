import {describe, expect, it} from 'vitest'
import {translate} from '../src/receipt/translate.js'

const amountsOf = (text: string): Array<[string, string, number | undefined]> =>
  translate(`# Kuchen\n\n${text}\n\nBei 180 °C 40 Minuten backen.\n`, {file: 'kuchen.md'}).receipts[0]!.ingredients.map(
    ({item, measure, amount}) => [item, measure, amount?.low],
  )

/** Halves and quarters as German writes them, in every ending. Common practice, no source. */
describe('German halves and quarters', () => {
  it.each<[string, string, number]>([
    ['ein halber Liter Milch', 'litre', 0.5],
    ['einen halben Liter Milch', 'litre', 0.5],
    ['½ Liter Milch', 'litre', 0.5],
    ['dreiviertel Liter Milch', 'litre', 0.75],
    ['drei viertel Liter Milch', 'litre', 0.75],
    ['ein achtel Liter Milch', 'litre', 0.125],
    ['eineinhalb Liter Milch', 'litre', 1.5],
    ['ein und ein halber Liter Milch', 'litre', 1.5],
    ['eine halbe Tasse Milch', 'tasse', 0.5],
    ['ein Viertelliter Milch', 'viertelliter', 1],
    ['einen Achtelliter Milch', 'achtelliter', 1],
    ['ein halbes Pfund Zucker', 'pfund', 0.5],
    ['anderthalb Pfund Butter', 'pfund', 1.5],
    ['zweieinhalb Pfund Mehl', 'pfund', 2.5],
    ['ein Viertelpfund Butter', 'viertelpfund', 1],
    ['ein halber Teelöffel Salz', 'teaspoon', 0.5],
    ['eine halbe Zitrone', 'count', 0.5],
    ['ein halbes Dutzend Eier', 'count', 6],
  ])('reads a line of a list: %s', (line, measure, low) => {
    expect(amountsOf(`- ${line}`).map(([, ...rest]) => rest)).toEqual([[measure, low]])
  })

  it('reads them in a text as well', () => {
    expect(
      amountsOf(
        'Man nehme einen halben Liter Milch, ein halbes Pfund Zucker, eine halbe Tasse Öl und anderthalb Pfund Mehl. Mit einem halben Teelöffel Salz und einem Viertelliter Sahne verrühren.',
      ).map(([, ...rest]) => rest),
    ).toEqual([
      ['litre', 0.5],
      ['pfund', 0.5],
      ['tasse', 0.5],
      ['pfund', 1.5],
      ['teaspoon', 0.5],
      ['viertelliter', 1],
    ])
  })

  it('takes no share of what is told elsewhere, no halved fruit and no time for an amount', () => {
    expect(
      amountsOf(
        '- 500 g Butter\n- 12 Aprikosen\n\nEin Drittel der Butter zugeben. Mit halben Aprikosen belegen. Eine halbe Stunde ruhen lassen.',
      ).map(([, ...rest]) => rest),
    ).toEqual([
      ['gram', 500],
      ['count', 12],
    ])
  })

  it('weighs a quarter of a pound as the German pound of 500 g', () => {
    const [butter] = translate('# Kuchen\n\n- ein Viertelpfund Butter\n', {file: 'k.md'}).receipts[0]!.ingredients
    expect(butter!.grams!.likely).toBeCloseTo(125, 6)
  })
})
