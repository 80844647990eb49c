import {withoutBatch} from './batches.js'
import type {AmountNamed, Phrase, PhraseValue} from './types.js'

/**
 * The planner's words in English, by id. The blanks are filled from a phrase's values; another language gives the same ids.
 * Short and plain: they are read in a smoky kitchen.
 */
export const phrases = {
  'evening before': '{dishes}: mix the dough the evening before, with cold water.',
  'evening before cold': '{dishes}: mix the dough the evening before, with what wets it cold.',
  'evening before sponge': '{dishes}: make the dough with the sponge the evening before, with what more it takes cold.',
  sponge:
    '{dishes}: set the sponge: the leaven, with as much of the flour and of what wets it as the receipt gives it. Leave it to work until {until}.',
  'sponge cold':
    '{dishes}: set the sponge the evening before: the leaven, with as much of the flour and of what wets it as the receipt gives it. Cover it and set it in the refrigerator (3–5 °C, 37–41 °F), where it works slowly until {until}.',
  'sponge cool':
    '{dishes}: set the sponge the evening before: the leaven, with as much of the flour and of what wets it as the receipt gives it. Cover it and stand it in a cellar or larder of 10–15 °C (50–60 °F), where it works slowly until {until}.',
  'sponge again':
    '{dishes}: feed the sponge or leaven of the evening before, with as much of the flour and of what wets it as the receipt gives it. Leave it to work until {until}.',
  mix: '{dishes}: mix the dough.',
  'mix sponge': '{dishes}: make the dough with the sponge.',
  batch: '{dishes}, batch {number} of {of} ({count} for load {load})',
  part: '{dishes}, part {number} of {of} ({count} for load {load})',
  'make up': '{dishes}: make up, ready to set in at {at}.',
  'make up several': '{dishes}: make up in this order, ready to set in at {at}.',
  'make up early': '{dishes}: make up before the night, and keep cool until set in.',
  'make up first': '{dishes}: make up, ready to set in at {at}. First {first}.',
  'make up several first': '{dishes}: make up in this order, ready to set in at {at}. First {first}.',
  'make up early first': '{dishes}: make up before the night, and keep cool until set in. First {first}.',
  'first work': '{work}',
  'first work of': 'for {dishes} {work}',
  rise: '{dishes}: leave the dough to rise until {until}.',
  'rise late':
    '{dishes}: the oven is late for it. When the dough has doubled knock it down, and let it rise again until {until}.',
  'rise cool':
    '{dishes}: cover the dough and stand it in a cellar or larder of 10–15 °C (50–60 °F), where it rises slowly until {until}.',
  'rise cold':
    '{dishes}: cover the dough and set it in the refrigerator (3–5 °C, 37–41 °F), where it rises slowly until {until}.',
  'put by':
    '{dishes}: no place is left in the oven, and the dough is mixed. Knock it down, cover it and set it in the refrigerator (5 °C, 41 °F, or colder) now: it keeps till tomorrow there. Shape it then and let it rise before it is baked; or bake it today in another oven, or as flat cakes on a griddle.',
  'put by cold':
    '{dishes}: no place is left in the oven, and the dough stands in the cold. Leave it there if that is at 5 °C (41 °F) or colder, else set it in the refrigerator now: it keeps till tomorrow there. Bake it then, or today in another oven.',
  'put by shaped':
    '{dishes}: no place is left in the oven, and the dough is shaped and stands in the warm. Cover it and set it in the refrigerator (5 °C, 41 °F, or colder) now: it keeps till tomorrow there, and is baked as it is then. What is full risen now is knocked down first, and shaped again and left to rise before it is baked. Or bake it today in another oven.',
  'put by filled':
    '{dishes}: no place is left in the oven, and it is shaped, with raw meat or fish in it. Cover it and set it in the refrigerator (5 °C, 41 °F, or colder) now, and bake it tomorrow as it is, or today in another oven. Throw away what has stood in the warm for four hours since it was filled.',
  shape: '{dishes}: shape the dough.',
  prove: '{dishes}: leave the shaped dough to rise until {until}.',
  'prove late':
    '{dishes}: the oven is late for it. Set the shaped dough in the refrigerator or the coldest place there is; from {warm} let it rise on in the warm until {until}.',
  'prove in refrigerator':
    '{dishes}: cover the shaped dough and set it in the refrigerator (3–5 °C, 37–41 °F), where it rises slowly until {until}.',
  'prove in cellar':
    '{dishes}: cover the shaped dough and stand it in a cellar or larder of 10–15 °C (50–60 °F), where it rises slowly until {until}.',
  'prove cold': '{dishes}: set the shaped dough in the cold, where it rises slowly until {until}.',
  light: 'Light the fire. Burn {wood} of wood over {burn}.',
  'light again': 'Light the fire again. Burn {wood} of wood over {burn}.',
  feed: 'Feed the fire: {wood}.',
  rake: 'Rake out the coals. Swab the floor.',
  soak: 'Shut the door. Let the heat even out for {soak}.',
  test: 'Test the heat: about {celsius}.',
  load: 'Set in load {load}: {dishes}.',
  'load at': '{dishes} at the {zone}',
  'load at two': '{dishes} at the {zone} and the {zone2}',
  'load across': '{dishes} over the floor',
  'all of': '{dishes}',
  'some of': '{dishes} ({count} of {all})',
  'some of at': '{dishes} ({count} of {all}, {zone})',
  'some of at two': '{dishes} ({count} of {all}, {zone} and {zone2})',
  draw: 'Draw {dishes}.',
  'top up': '{dishes}: while the door is open, look in, and top up with boiling water where it has sunk under what is in it.',
  'fill up':
    '{dishes}: before the door is shut, fill up with boiling water, as far as it holds without boiling over, and cover it: nobody looks in before {until}.',
  fill: '{dishes}: take it out, fill it as the receipt says (“{words}”), and set it in again: until now its crust has baked empty.',
  tend: '{dishes}: while the door is open, do as the receipt says (“{words}”).',
  'tend alone': '{dishes}: open the door for a moment, do as the receipt says (“{words}”), and shut it at once.',
  'tend oftener':
    '{dishes}: the receipt says “{words}”, oftener than this plan opens the door: open it for a moment between, and shut it at once.',
  shut: 'Shut the door. In it stays: {dishes}.',
  'soak over night': '{dishes}: put to soak {amounts} (“{words}”).',
  'soak over night plain': '{dishes}: put to soak what the receipt says (“{words}”).',
  'set over night': '{dishes}: set the sponge or leaven with {amounts} (“{words}”).',
  'set over night plain': '{dishes}: set the sponge or leaven (“{words}”).',
  'stand cool over night':
    '{dishes}: mix what is to stand overnight, cover it and stand it in the cool (“{words}”). On the day make up what is left to do.',
  'stand cold over night':
    '{dishes}: mix what is to stand overnight, cover it and set it in the refrigerator, at 5 °C (41 °F) or colder (“{words}”). On the day make up what is left to do.',
  'leave ajar': 'Leave the door a little open, as the receipt asks (“{words}”). In it stays: {dishes}.',
  'keep shut': 'Keep the door shut until {until}, as the receipt asks: {dishes}.',
  'keep shut but':
    'Keep the door shut until {until}, as the receipt asks: {dishes}. It is opened at {opened} all the same, for what is done or waits then: be quick.',
  'shut empty': 'Shut the door.',
  'sign coals': 'The wood has burned to coals and the walls over the fire are burning white.',
  'sign coals dark':
    'The wood has burned to coals. Do not wait for white walls: this fire does not get them hot enough to burn off their soot.',
  'sign walls': 'The soot has burned off: the walls are white.',
  'sign flame': 'A clear flame along the vault.',
  'sign floor': 'No glow on the floor; the damp cloth hisses.',
  'sign floor dark':
    'No glow on the floor; the damp cloth hisses. At the end of the soak the floor is at about {celsius}. {sign}',
  'sign soak': 'The door is warm; no smell of smoke.',
  'sign flour scorches': 'Flour on the floor goes dark brown in a minute; it must not blacken at once.',
  'sign flour browns': 'Flour on the floor browns slowly; you can hold your arm in for a count of {count}.',
  'sign paper': 'White paper goes {colour} in five minutes.',
  'sign arm': 'You can hold your arm in for a count of {count}.',
  'sign sponge': 'Full of bubbles, and just beginning to fall.',
  'sign proved': 'Well risen; a finger mark comes back slowly.',
  'sign dough': 'The dough has doubled; a finger mark stays.',
  'sign own': '{sign}',
  'ahead hot': 'Too hot: leave the door open a few minutes and test again.',
  'behind fire': 'Behind: feed a little oftener, smaller wood. Do not shorten the fire.',
  'ahead coals': 'Burned down early: rake out now and soak longer.',
  'behind coals': 'Still flames: wait. Everything after moves by as much.',
  'behind cool': 'Too cool: set in now what can wait for less heat, and plan again.',
  'ahead dough': 'Ready early: keep it cool. It can wait {hold}.',
  'behind dough':
    'Not risen: move it nearer the oven. If the oven is late by more than {hold}, knock the dough down and shape it again.',
  'behind bulk':
    'Not risen: move it nearer the oven. If the oven is late by more than {hold}, knock the dough down and let it rise again before you shape it.',
  'ahead sponge': 'Fallen before then: make the dough of it as soon as you can.',
  'behind sponge': 'Not full of bubbles by then: stand it in the warm until it is, and plan again.',
  'ahead night': 'Full risen before then: knock it down, and leave it in the cold.',
  'behind night':
    'Not risen by then: stand it in the warm until it is, and plan again. If the oven is late, leave it in the cold for as long.',
  'ahead cold': 'Ready early: leave it in the cold. It can wait {hold}.',
  'behind cold':
    'Not risen by then: stand it in the warm for an hour before it goes in. If the oven is late, leave it in the cold: it can wait {hold}; after that bake it as it is, and do not knock it down.',
  'ahead raw':
    'Raw meat or fish: keep {dishes} in the refrigerator, at 5 °C (41 °F) or colder, until set in, and the meat before it is made up.',
  'ahead raw dough':
    'Raw meat or fish: keep that of {dishes} in the refrigerator, at 5 °C (41 °F) or colder, and out of the dough until that is shaped, whatever the receipt says: the dough rises without it.',
  'ahead raw filling':
    '{dishes}: fill or work in the raw meat or fish now, straight from the refrigerator. From here to the oven it stands in the warm for two hours at most.',
  'ahead raw proving':
    'Raw meat or fish is in {dishes}: risen early, put it in the refrigerator. Two hours in the warm since it was filled are enough, four the utmost; what has stood longer is thrown away.',
  'ahead load': 'Oven too hot for it: wait, door ajar, until it has fallen to {celsius}.',
  'behind load': 'Oven cooler than {celsius}: set in at once and leave it longer.',
  'ahead draw': 'Done early (look from {early}): draw it, lay paper over what stays.',
  'behind draw': 'Not done: shut the door and look again every ten minutes, up to {late}.',
  'behind draw ajar': 'Not done: leave the door ajar and look again every half hour, up to {late}.',
  'behind draw ajar late': 'Not done: leave the door ajar and look again every half hour.',
  'behind draw ajar kept': 'Not done: leave the door ajar and look again every half hour, up to {late}. {kept}',
  'behind draw ajar kept late': 'Not done: leave the door ajar and look again every half hour. {kept}',
  'behind draw late': 'Not done: shut the door and look again every ten minutes.',
  'behind draw kept': 'Not done: shut the door and look again every ten minutes, up to {late}. {kept}',
  'behind draw kept late': 'Not done: shut the door and look again every ten minutes. {kept}',
  'behind draw for fire': 'Not done: out all the same, before the fire is lit.',
  'behind draw for fire kept': 'Not done: out all the same, before the fire is lit. {kept}',
  'out for fire unfinished':
    '{dishes}: not done by then: cook through elsewhere at once, or set in again when the oven is ready at {ready}, and note that.',
  'out for fire elsewhere':
    '{dishes}: not done by then, and the oven is ready again only at {ready}: cook through elsewhere at once.',
  'other time': '{dishes}: {stay} in the heat it finds stand for the {said} of its receipt.',
  uneven:
    '{dishes} fills the floor: what stands at the {zone} browns first, what stands at the {zone2} last; all of it is drawn together.',
  'cool slowly':
    '{dishes}: the receipt leaves it in after the bake (“{words}”), and this oven is at its heat still, or wanted: let it cool slowly under a cloth, out of the draught.',
  'may stay in': '{dishes}: not done, it may stay in till {late}.',
  'till morning': '{dishes}: not done by {late}, leave in till the morning.',
  'till morning filled': '{dishes}: not done by {late}, fill up with boiling water, cover, and leave in till the morning.',
  'out by night': '{dishes}: not done by {late}, draw all the same, and bake on in another oven.',
  'keep hot':
    'Done: {dishes}, wanted at {by}: keep covered and at 57 °C (135 °F) or hotter till then, or cool in shallow dishes within two hours and heat through to 74 °C (165 °F).',
  'warm again':
    'Done: {dishes}, wanted hot at {by}: cover with a cloth till then, and warm through beside the oven or in it before it is eaten; it keeps without.',
  'keep cold':
    'Done: {dishes}, wanted at {by}: let cool, stand at 5 °C (41 °F) or colder within two hours, and keep so till it is eaten.',
  'keep long':
    'Done: {dishes}, not wanted for hours yet: cool in shallow dishes to 21 °C (70 °F) within two hours and to 5 °C (41 °F) within four more, and heat through to 74 °C (165 °F) before it is eaten.',
  'kept warm': '{dishes}: keep at 57 °C (135 °F) or hotter till it is eaten.',
  'was cold': '{dishes}: if the oven has been under 57 °C (135 °F) for two hours, do not eat it.',
  suggest: '{dishes} would fill idle floor: set in at {at}, draw at {draw}.',
  'suggest some': '{count} of {all} of {dishes} would fill idle floor: set in at {at}, draw at {draw}.',
  'moved later': 'set in {minutes} later',
  'moved earlier': 'set in {minutes} earlier',
  'draw later': 'drawn {minutes} later',
  'draw earlier': 'drawn {minutes} earlier',
  'moved place': 'placed elsewhere: {zone} instead of {old}',
  'moved vessels': '{count} of {all} vessels have other places on the floor than before: set them in by the new map',
  'eased start': 'set in {difference} under its least heat; leave it longer',
  'eased end': 'drawn {difference} under its least heat; look well that it is done',
  'eased dose': 'drawn with {percent} % of its heat, after its receipt’s shortest time; look before you draw it',
  'eased short': 'drawn with {percent} % of its heat; look that it is done, and leave it longer if it is not',
  'eased unfinished':
    'drawn with {percent} % of its heat, and little more to be had later; unless it is done, bake it on in another oven',
  'drawn early': 'drawn with {percent} % of its heat, as the log has it; unless it is done, bake it on in another oven',
  'drawn raw': 'drawn with {percent} % of its heat, as the log has it; set it in again now, unless it is done',
  'out for fire':
    'taken out for the fire at {at} with {percent} % of its heat; unless it is done, cook it through elsewhere, or set it in again on that fire',
  'said raw': 'drawn, and not done, as the log has it; set it in again now, unless it was cooked through since',
  'said raw late':
    'drawn, and not done, as the log has it; cook it through elsewhere within two hours of its draw, or do not eat it',
  'put back in vain': 'drawn at {out} and set in again at {again}: not safe to bake on; take it out now',
  'put back': 'drawn at {out} and set in again at {again}: reckoned as in the oven since {since}',
  'put back some': '{count} of {all} drawn at {out} and set in again at {again}: reckoned as in the oven since {since}',
  'looked at': 'not done when it was looked at at {at}: reckoned to be done at {until}',
  'left out': 'left out',
  lost: '{count} of {all} lost; not planned again',
  'lost, made again': '{count} of {all} lost; {again} made again and set in at {at}',
  'lost, some made again': '{count} of {all} lost; {again} made again and set in at {at}, the rest not planned again',
  'not asked': '{title}: no longer asked for, and not set in',
  'not asked and in': 'no longer asked for; it is in, and stays till it is done',
  'asked anew': 'not asked for before',
  'asked otherwise': '{count} asked for instead of {all}',
  'why day': 'day.md asks for something else since the fire was lit',
  'why lit later': 'the fire was lit {minutes} later than planned',
  'why lit earlier': 'the fire was lit {minutes} earlier than planned',
  'why lit again': 'the fire was lit again at {at}',
  'why lit again later': 'the fire was lit again {minutes} later than planned',
  'why lit again earlier': 'the fire was lit again {minutes} earlier than planned',
  'why set in later': '{dishes} went in {minutes} later than planned',
  'why set in earlier': '{dishes} went in {minutes} earlier than planned',
  'why set in later than replanned': '{dishes} went in {minutes} later than the plan made at {at} had it',
  'why set in earlier than replanned': '{dishes} went in {minutes} earlier than the plan made at {at} had it',
  'why set in later after lighting': '{dishes} went in {minutes} later after the fire was lit than planned',
  'why set in earlier after lighting': '{dishes} went in {minutes} sooner after the fire was lit than planned',
  'why set in later after lighting than replanned':
    '{dishes} went in {minutes} later after the fire was lit than the plan made at {at} had it',
  'why set in earlier after lighting than replanned':
    '{dishes} went in {minutes} sooner after the fire was lit than the plan made at {at} had it',
  'why door': 'the door stood open for {minutes} in all',
  'why log': 'to agree with the log',
  'why readings': 'to agree with the readings',
  'why hotter': 'the oven is {difference} hotter than planned at {at}',
  'why cooler': 'the oven is {difference} cooler than planned at {at}',
  'why hotter too': 'and allowing for that the oven is {difference} hotter than planned at {at}',
  'why cooler too': 'and allowing for that the oven is {difference} cooler than planned at {at}',
  'why both': '{reasons}',
  'not quite hot enough': '{dishes}: to be set in at {celsius} or more; the oven falls a few degrees short of that',
  'not hot enough': '{dishes}: to be set in at {celsius} or more; the oven has {hottest} at most',
  'curve ended': '{dishes}: not set in while the oven’s heat is reckoned: its curve ends before that, so long after the fire',
  'not in range':
    '{dishes}: to be set in between {celsius} and {high}; the oven falls through that too fast, or never so far ({coolest} at the end)',
  'not done': '{dishes}: no more than {percent} % of the heat needed before the oven is under {celsius}',
  'not done at end': '{dishes}: no more than {percent} % of the heat needed by the end of the day',
  'not done before fire': '{dishes}: no more than {percent} % of the heat needed before the oven is fired again',
  'not done before cold':
    '{dishes}: no more than {percent} % of the heat needed before it has stood {minutes} in an oven under {celsius}, and no food may stand so longer',
  'in the night': '{dishes}: could only be set in or drawn in the night',
  'kept out by night':
    '{dishes}: the oven falls to what it takes from {from}, in the night, when no door is opened; it is past it after {until}',
  'kept out by night of some':
    '{count} of {all} of {dishes}: the oven falls to what it takes from {from}, in the night, when no door is opened; it is past it after {until}',
  'too many': '{dishes}: more than can be baked while the oven is right for it',
  'too many of some': '{count} of {all} of {dishes}: more than can be baked while the oven is right for it',
  'too many for floor': '{dishes}: more than the floor holds while the oven is right for it',
  'too many for floor of some': '{count} of {all} of {dishes}: more than the floor holds while the oven is right for it',
  'too many for hands': '{dishes}: more than the hands can set in and draw while the oven is right for it',
  'too many for hands of some':
    '{count} of {all} of {dishes}: more than the hands can set in and draw while the oven is right for it',
  'too much heat': '{dishes}: it takes more heat than the oven has while it is right for it',
  'too much heat of some': '{count} of {all} of {dishes}: all of it takes more heat than the oven has while it is right for it',
  'no place': '{dishes}: no place was found for it',
  'no place of some': '{count} of {all} of {dishes}: no place was found for it',
  'far too much': '{dishes}: far more is asked for than this oven bakes in a day',
  'all taken': '{dishes}: no place was found for it beside all the rest',
  'all taken of some': '{count} of {all} of {dishes}: no place was found for it beside all the rest',
  'heat shared': '{dishes} and {others} together want more heat than the oven has while it is right for them',
  'heat shared of some':
    '{count} of {all} of {dishes} and {others} together want more heat than the oven has while it is right for them',
  'floor taken': '{dishes} and {others} want the same floor while the oven is right for them',
  'floor taken of some': '{count} of {all} of {dishes} and {others} want the same floor while the oven is right for them',
  'hands shared': '{dishes} and {others} want more hands at the door than there are while the oven is right for them',
  'hands shared of some':
    '{count} of {all} of {dishes} and {others} want more hands at the door than there are while the oven is right for them',
  'no one fire': '{dishes} and {others}: no one fire, whenever it is lit, is right for them all',
  'no one fire of some': '{count} of {all} of {dishes} and {others}: no one fire, whenever it is lit, is right for them all',
  'late together': '{dishes} and {others}: not all of them can be had within hours of when they are wanted',
  'late together of some':
    '{count} of {all} of {dishes} and {others}: not all of them can be had within hours of when they are wanted',
  'too many in time': '{dishes}: more than can be had within hours of when it is wanted',
  'too many in time of some': '{count} of {all} of {dishes}: more than can be had within hours of when it is wanted',
  'not together': '{dishes} and {others}: not all of them can be baked while the oven is right for them',
  'not together of some':
    '{count} of {all} of {dishes} and {others}: not all of them can be baked while the oven is right for them',
  'as left': '{reasons}, as the rest leaves the oven',
  'as left of some': '{count} of {all} of {reasons}, as the rest leaves the oven',
  'too late': '{dishes}: as the rest leaves the oven, not done before {at}, too late to be of use',
  'too late of some': '{count} of {all} of {dishes}: as the rest leaves the oven, not done before {at}, too late to be of use',
  'not risen': '{dishes}: the oven is right for it only before its dough can have risen',
  'not risen of some': '{count} of {all} of {dishes}: the oven is right for it only before its dough can have risen',
  'floor busy':
    '{dishes}: the oven is right for it only from {from} to {until}, and then there is no place for it beside {others}',
  'floor busy of some':
    '{count} of {all} of {dishes}: the oven is right for it only from {from} to {until}, and then there is no place for it beside {others}',
  'hands busy': '{dishes}: the oven is right for it only from {from} to {until}, and the hands are full then with {others}',
  'hands busy of some':
    '{count} of {all} of {dishes}: the oven is right for it only from {from} to {until}, and the hands are full then with {others}',
  'heat spoiled':
    '{dishes}: the oven is right for it only from {from} to {until}, and set in then it takes heat that {others} cannot spare',
  'heat spoiled of some':
    '{count} of {all} of {dishes}: the oven is right for it only from {from} to {until}, and set in then it takes heat that {others} cannot spare',
  'heat of its own':
    '{dishes}: the oven is right for it only from {from} to {until}, and set in then it cools the oven too far to be done',
  'heat of its own of some':
    '{count} of {all} of {dishes}: the oven is right for it only from {from} to {until}, and set in then it cools the oven too far to be done',
  'mouth width': '{dishes}: {size} across, and the mouth is {room} wide',
  'mouth height': '{dishes}: {size} high, and the mouth is {room} high',
  'vault height': '{dishes}: {size} high, and the vault is {room} high',
  'too large': 'one {vessel} does not fit on this floor',
  'remedy second fire': 'A second fire of {minutes} at {at}: {outcome}.',
  'remedy fire again':
    'Light the fire again at {at}, with nothing left in the oven, and rake it out at {raked}: {outcome}. To have the day planned with it, note “{note}”.',
  'remedy earlier fire': 'Write “fire from: {from}”, {minutes} earlier than the day allows: lit at {at}, {outcome}.',
  'remedy longer fire': 'Let the fire burn {minutes} longer, until {at}, and note the wood it takes: {outcome}.',
  'remedy shorter fire':
    'Rake the coals out {minutes} sooner, at {at}, and feed no more wood than has burned to coals by then: {outcome}.',
  'remedy more hands': 'With {hands} pairs of hands: {outcome}.',
  'remedy not hot': 'Ask for {dishes} by {at}, and not hot then: {outcome}.',
  'remedy smaller batch': 'Bake {count} of {all} of {dishes}: {outcome}.',
  'remedy state heat': 'Take {dishes} at {celsius} instead (write “{line}” in the front matter of {file}): {outcome}.',
  'remedy smaller vessel': 'Write “{amount}” for {dishes} in the day, in a vessel that goes in: {outcome}.',
  'remedy before night': 'Set {dishes} in before the night, at {at}, with the oven at {celsius}: {outcome}.',
  'remedy door open':
    'Leave the door open for {minutes} from {at}, so that the oven has fallen before the night, and note that: {outcome}.',
  'remedy door open now':
    'Leave the door open for {minutes} from {at}, so that the oven falls to what is to be set in, and note it when you shut it: {outcome}.',
  'remedy one move': 'Shift {dishes} aside for a moment at {at}, to reach {others}: {outcome}.',
  'remedy two moves': 'Shift {dishes} aside for a moment at {at} and {again}, to reach {others}: {outcome}.',
  'remedy leave out': 'Leave out {dishes}: {outcome}.',
  'remedy late': 'Bake {dishes} all the same, drawn at {at}: {outcome}.',
  'outcome all': 'everything fits',
  'outcome still': '{count} of {dishes} still left out',
  'outcome fewer': 'only {count} of {dishes} left out, and about {people} go without something, not {before}',
  'outcome filled': 'with as many of {dishes} as then have a place',
  'outcome in use': 'nothing left out or more than {hours} late',
  'outcome still or late': '{count} of {dishes} still left out or more than {hours} late',
  'outcome fewer or late':
    'only {count} of {dishes} left out or more than {hours} late, so that about {people} go without something in time, not {before}',
  'outcome in time': 'nothing comes late',
  'outcome hot': 'all that is wanted hot comes hot',
  'outcome too soon': 'what is wanted hot is drawn {minutes} further before its time',
  'outcome hotter': 'what is wanted hot comes nearer to its hour',
  'outcome late': '{minutes} late in all',
  'outcome less late': '{minutes} late in all instead of {before}',
  'outcome first fire': 'the first of {minutes} at {at}',
  'outcome heat': 'every dish gets all its heat',
  'outcome wanting': '{count} with less than all their heat',
  'outcome less wanting': '{count} with less than all their heat instead of {before}',
  'outcome more heat': '{count} still with less than all their heat, but nearer to it',
  'outcome hours': 'set in within {minutes} of the hours planned instead of {before}',
  'outcome more wood': '{wood} more wood',
  'outcome less wood': '{wood} less wood',
  'outcome same wood': 'no more wood',
} as const

export type PhraseId = keyof typeof phrases

/** Make a phrase. */
export function phrase(id: PhraseId, values: Record<string, PhraseValue> = {}): Phrase {
  return {id, values}
}

/** How values are written; the sheets bring their own for another language or other units. */
export interface Speaker {
  readonly templates: Readonly<Record<string, string>>
  readonly title: (dish: string) => string
  readonly clock: (minutes: number) => string
  readonly minutes: (minutes: number) => string
  readonly celsius: (celsius: number) => string
  readonly kilograms: (kilograms: number) => string
  /** A size of a vessel or of the oven. */
  readonly metres: (metres: number) => string
  /** So many degrees more or less. */
  readonly difference: (celsius: number) => string
  readonly word: (word: string) => string
  /** An amount as the kitchen measures it, and its item. */
  readonly amount: (amount: AmountNamed) => string
  readonly and: (list: readonly string[]) => string
}

/** Say a phrase. */
export function speak(p: Phrase, speaker: Speaker): string {
  return fillIn(speaker.templates[p.id] ?? '', (name) => {
    const value = p.values[name]
    return value === undefined ? '' : sayValue(value, speaker)
  })
}

/**
 * A template with its `{blanks}` filled. A value that ends in a full stop of its own, such as the German “10:20 vorm.”, ends the sentence
 * with it: there is only one stop (Amtliche Regelung der deutschen Rechtschreibung, § 103; from memory).
 *
 * @param valued what a blank is filled with; null leaves it as it stands, so that a gap is seen
 */
export function fillIn(template: string, valued: (name: string) => string | null): string {
  return template.replace(/\{(\w+)\}(\.?)/g, (whole, name: string, stop: string) => {
    const value = valued(name)
    if (value === null) return whole
    return value.endsWith('.') ? value : value + stop
  })
}

function sayValue(value: PhraseValue, speaker: Speaker): string {
  if (typeof value === 'string') return value
  if (typeof value === 'number') return String(value)
  if (value.unit === 'dishes') {
    const titles = value.dishes.map(speaker.title)
    return speaker.and(value.whole ? [...new Set(titles.map(withoutBatch))] : titles)
  }
  if ('phrases' in value) return value.phrases.map((p) => speak(p, speaker)).join(value.unit === 'phrases' ? '; ' : ' ')
  if (value.unit === 'amounts') return speaker.and(value.amounts.map(speaker.amount))
  if (value.unit === 'word') return speaker.word(value.word)
  if (value.unit === 'clock') return speaker.clock(value.value)
  if (value.unit === 'minutes') return speaker.minutes(value.value)
  if (value.unit === 'kilograms') return speaker.kilograms(value.value)
  if (value.unit === 'count') return String(value.value)
  if (value.unit === 'metres') return speaker.metres(value.value)
  if (value.unit === 'difference') return speaker.difference(value.value)
  return speaker.celsius(value.value)
}

/** 24-hour clock, with "next day" and "the evening before" said. */
export function clockText(minutes: number): string {
  const day = Math.floor(minutes / 1440)
  const m = ((Math.round(minutes) % 1440) + 1440) % 1440
  const text = `${Math.floor(m / 60)}:${String(m % 60).padStart(2, '0')}`
  return day === 0
    ? text
    : day === -1
      ? `${text} the day before`
      : day < 0
        ? `${text}, ${-day} days before`
        : day === 1
          ? `${text} next day`
          : `${text} on day ${day + 1}`
}

/** "45 min", "1 h 30 min". */
export function minutesText(minutes: number): string {
  const m = Math.round(minutes)
  if (m < 90) return `${m} min`
  return m % 60 === 0 ? `${m / 60} h` : `${Math.floor(m / 60)} h ${m % 60} min`
}

/** "a, b and c", with the language's own word for "and". */
export function listed(items: readonly string[], and: string): string {
  return items.length < 2 ? (items[0] ?? '') : `${items.slice(0, -1).join(', ')} ${and} ${items.at(-1)}`
}

/** The English speaker. */
export function english(title: (dish: string) => string): Speaker {
  return {
    templates: phrases,
    title,
    clock: clockText,
    minutes: minutesText,
    celsius: (c) => `${Math.round(c)} °C (${Math.round((c * 9) / 5 + 32)} °F)`,
    kilograms: (kg) => `${kg < 10 ? Math.round(kg * 10) / 10 : Math.round(kg)} kg`,
    metres: (m) => `${Math.round(m * 1000) / 10} cm`,
    difference: (c) => `${Math.round(c)} °C`,
    word: (w) => w,
    amount: ({kitchen, item, called}) => (kitchen === item ? called : `${kitchen} ${called}`),
    and: (list) => listed(list, 'and'),
  }
}
