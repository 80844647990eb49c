/**
 * Classes of items that the grammar of an entry turns on: what is counted, and what is no ingredient by its name alone.
 */

/** Groups whose members are counted by the piece. */
export const COUNTED = new Set(['egg', 'fruit', 'vegetable', 'fish', 'nut', 'meat', 'spice', 'herb', 'bread'])
/** Groups whose members are poured, scooped or weighed. */
export const POURED = new Set('flour,meal,starch,sugar,syrup,fat,dairy,liquid,spirit,leaven,salt,pulse'.split(','))
/** Groups of which "a" or "an" is one to put in. */
export const ONE_OF = new Set(['egg', 'fruit', 'vegetable', 'fish', 'meat'])
/** Names of kinds of things, and of what is being made: by themselves they tell of no ingredient. */
export const GENERAL = new Set(
  'fruit,berry,berries,fish,meat,vegetable,herb,nut,game,crust,seasoning,sweetening,flavouring,fat,bone,sauce,dough,batter,gravy,sponge,liquor,syrup,bread,cake,biscuit,toast,ice,snow,spirit,colour,pickle,preserve,jam,jelly,food,soup,broth,stuffing,essence,tea,coffee,chocolate,wood,ash'.split(
    ',',
  ),
)
/** What is made of the name before it: "cherry pies" is no mention of cherries to put in. */
export const MADE = new Set(
  'pie,pies,pudding,puddings,cake,cakes,tart,tarts,soup,bread,custard,custards,dumpling,dumplings,fritters,pancakes,tartlets,cheesecakes,biscuits,wine,jelly,jam,preserve,sauce,cream,creams,ice,ices,salad,stew'.split(
    ',',
  ),
)
