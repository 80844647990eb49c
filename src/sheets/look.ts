/**
 * The look of every page: black on white, large, meant for paper by a smoky oven. Nothing is told by colour. The text is a constant, so
 * that the Content-Security-Policy can name its hash (`tests/sheets-safety.test.ts` checks that they agree) and no other style runs.
 */
export const lookCss = `
:root { color: #000; background: #fff; font: 1rem/1.4 "Liberation Sans", "Helvetica Neue", Arial, sans-serif; }
* { box-sizing: border-box; }
body { margin: 0 auto; padding: 1rem; max-width: 62rem; overflow-wrap: break-word; }
h1, h2, h3, .stamp { font-family: Charter, "Liberation Serif", Georgia, serif; line-height: 1.15; }
h1, h2, h3 { break-after: avoid; }
h1 { font-size: 2rem; margin: 0; border-bottom: 4px double #000; padding-bottom: .3rem; }
h2 { font-size: 1.35rem; margin: 1.3rem 0 .4rem; }
h3 { font-size: 1.1rem; margin: 1rem 0 .3rem; }
p, ul, ol, table, figure, blockquote { margin: .5rem 0; }
ul, ol { padding-left: 1.4rem; }
a { color: #000; text-decoration: underline; }
a:focus-visible { outline: 3px solid #000; outline-offset: 2px; }
.lead { font-size: 1.1rem; }
.small { font-size: .85rem; }
.ours { border-left: 3px dotted #000; padding-left: .6rem; }
.warn { border: 2px solid #000; padding: .4rem .7rem; }
.warn { break-inside: avoid; }
.warn p, .warn ul { margin: .2rem 0; }
table { border-collapse: collapse; width: 100%; }
caption { text-align: left; font-weight: bold; padding: .2rem 0; }
th, td { border-bottom: 1px solid #000; padding: .25rem .5rem .25rem 0; text-align: left; vertical-align: top; overflow-wrap: break-word; }
thead th { border-bottom: 2px solid #000; }
td.figure, th.figure { overflow-wrap: normal; }
tr { break-inside: avoid; }
.wide { overflow-x: auto; }
.blank { break-inside: avoid; }
.blank td { height: 1.9rem; padding-left: .4rem; border: 1px solid #000; }
.blank th { border: 1px solid #000; padding-left: .4rem; }
figure svg { display: block; width: 100%; height: auto; }
blockquote { border-left: 2px solid #000; padding-left: .8rem; margin-left: 0; font-family: Charter, "Liberation Serif", Georgia, serif; font-size: 1.1rem; overflow-wrap: anywhere; }
blockquote h1, blockquote h2, blockquote h3, blockquote h4 { font-size: 1.15rem; border: 0; }
mark { background: none; color: #000; border-bottom: 2px solid #000; }
.note { display: inline-block; min-width: 1.6rem; min-height: 1.6rem; text-align: center; }
sup { line-height: 0; font-weight: bold; }
.box { display: inline-block; width: 1.05em; height: 1.05em; border: 2px solid #000; vertical-align: -.12em; }
.day { list-style: none; margin: 0; padding: 0; }
.day > li { display: grid; grid-template-columns: 6.4rem minmax(0, 1fr); column-gap: .6rem; border-top: 1px solid #000; padding: .25rem 0; break-inside: avoid; }
.day > li.turn { border-top: 3px solid #000; }
.stamp { font-weight: bold; font-size: 1.3em; white-space: nowrap; }
.stamp .day-name { display: block; font-size: .62em; font-weight: normal; white-space: normal; }
.deed { display: grid; grid-template-columns: 1.35rem minmax(0, 1fr); column-gap: .3rem; }
.deed + .deed { margin-top: .25rem; }
.deed p { margin: 0; }
.do { font-size: 1.12em; line-height: 1.25; }
.bare .do { font-weight: bold; }
.no { border: 1.5px solid #000; padding: 0 .25em; }
.aside { font-size: .92em; line-height: 1.25; }
.again { margin: .1rem 0 0 1.65rem; }
.pair-box { white-space: nowrap; margin-left: .5em; }
.standing { border: 1px solid #000; padding: .3rem .7rem; font-size: .92em; line-height: 1.25; break-inside: avoid; }
.standing h2 { font-size: 1.05rem; margin: 0; }
.standing ul { margin: .1rem 0; columns: 2; column-gap: 2rem; }
.standing li { break-inside: avoid; }
.pair { display: grid; grid-template-columns: minmax(0, 2fr) minmax(0, 3fr); column-gap: 1.6rem; }
.pair.even { grid-template-columns: repeat(2, minmax(0, 1fr)); }
.maps { display: grid; grid-template-columns: repeat(2, minmax(0, 1fr)); gap: .4rem 1.6rem; }
.maps.many { grid-template-columns: repeat(3, minmax(0, 1fr)); gap: .2rem 1rem; font-size: .92rem; }
.maps.most { grid-template-columns: repeat(4, minmax(0, 1fr)); gap: .2rem .8rem; }
.map { break-inside: avoid; }
.many .map h2 { font-size: 1rem; margin: .2rem 0 0; }
.many .map figure { margin: .1rem 0; }
.many .map ul { margin: .1rem 0; font-size: .85rem; line-height: 1.2; }
.pairs { columns: 2; column-gap: 1.6rem; }
.pairs section { break-inside: avoid; }
.cautions-sheet h2 { margin: .5rem 0 .1rem; font-size: 1.1rem; }
.cautions-sheet ul { margin: .1rem 0; }
.day-sheet .small ul { columns: 2; column-gap: 2rem; }
.day-sheet .small li { break-inside: avoid; }
.map h2 { margin-top: .6rem; }
.exercise { break-before: page; }
.warn h2 { margin-top: .2rem; }
section.batch, .question { break-inside: avoid; }
.fall { width: auto; }
.fall th, .fall td { padding-right: 2rem; }
.line { display: block; border-bottom: 1px solid #000; height: 1.9rem; }
.plain { list-style: none; padding-left: 0; }
dl { display: grid; grid-template-columns: max-content minmax(0, 1fr); gap: .15rem .9rem; margin: .4rem 0; }
dt { max-width: 11rem; }
dd { margin: 0; }
nav ul { list-style: none; padding-left: 0; }
nav li, .index li { padding: .3rem 0; }
footer { margin-top: 1.2rem; border-top: 1px solid #000; font-size: .85rem; }
@media (max-width: 44rem) {
  .pair, .pair.even, .maps, .maps.many, .maps.most { grid-template-columns: minmax(0, 1fr); }
  .day > li { grid-template-columns: 5.4rem minmax(0, 1fr); }
  .stamp { font-size: 1.05rem; }
  h1 { font-size: 1.5rem; }
  .standing ul, .pairs, .day-sheet .small ul { columns: 1; }
  .stack thead { position: absolute; width: 1px; height: 1px; overflow: hidden; clip-path: inset(50%); }
  .stack tr, .stack td, .stack th { display: block; border: 0; padding: .1rem 0; }
  .stack tr { border-bottom: 1px solid #000; padding: .3rem 0; }
  .stack td:first-child, .stack td:first-child + th { display: inline; padding-right: .5rem; }
}
@media print {
  @page { margin: 9mm 12mm; }
  :root { font-size: 11pt; line-height: 1.28; }
  body { padding: 0; max-width: none; }
  nav, .screen { display: none; }
  .wide { overflow-x: visible; }
  .note { min-width: 0; min-height: 0; display: inline; }
  .dense { font-size: .95rem; }
  .tight { font-size: .83rem; }
  .tight .day > li { grid-template-columns: 5rem minmax(0, 1fr); }
  .tight .do, .tight .aside { display: inline; }
  .tight .aside::before { content: "\\2002"; }
  .dense .do, .tight .do { font-size: 1.1em; }
  .dense .stamp, .tight .stamp { font-size: 1.2em; }
  .dense .day > li { padding: .12rem 0; }
  .tight .day > li { padding: .04rem 0; }
  .dense .deed + .deed, .tight .deed + .deed { margin-top: .1rem; }
  .dense .lead, .tight .lead { font-size: 1em; }
  .dense .blank td, .tight .blank td { height: 1.6rem; padding-top: 0; padding-bottom: 0; }
  .tight .blank td { height: 1.3rem; }
  .tight .blank th { padding-top: 0; padding-bottom: 0; }
  .day-sheet.tight .small ul { columns: 3; }
  .tight > .warn:not(.small) { font-size: .9em; line-height: 1.2; }
  .tight .standing { font-size: .86em; }
  .tight .warn p, .tight .warn ul { margin-top: .1rem; margin-bottom: .1rem; }
  .dense .warn, .tight .warn { font-size: .84em; padding: .1rem .6rem; }
  .heat-sheet .small { font-size: .78rem; }
  .heat-sheet svg { max-height: 118mm; }
  .heat-sheet td, .heat-sheet th { padding-top: .08rem; padding-bottom: .08rem; }
  .cautions-sheet { font-size: .88rem; }
  .shopping { font-size: .84rem; line-height: 1.2; }
  .shopping td, .shopping th { padding-top: .12rem; padding-bottom: .12rem; }
  .handout { font-size: .93rem; }
  .handout h2 { margin-top: .75rem; }
  .handout .pair:not(.even) { grid-template-columns: minmax(0, 2fr) minmax(0, 3.8fr); column-gap: 1.2rem; }
  .handout .pair thead th:nth-child(2) { width: 36%; }
  .handout .ours, .handout > section, .handout .pair.even { break-inside: avoid; }
  .handout > section.small { font-size: .74rem; line-height: 1.2; }
  .handout > section.small h2 { font-size: 1rem; margin: .5rem 0 .1rem; }
  .handout > section.small p { margin: .1rem 0; }
  .handout td, .handout th { padding-top: .12rem; padding-bottom: .12rem; }
  .handout .small .plain { columns: 2; column-gap: 2rem; }
  .handout .small li { break-inside: avoid; }
  .weighing .batches { columns: 2; column-gap: 1.6rem; font-size: .9rem; }
  .batch h2 { font-size: 1.05rem; margin: .3rem 0 0; }
  .batch p { margin: 0; }
  .maps:not(.many) svg { max-height: 78mm; }
  .many:not(.most):has(.map:nth-child(7)) svg { max-height: 50mm; }
  .sheet + .sheet { break-before: page; }
  a { text-decoration: none; }
}
`
