import {words} from './row.js'
import type {FleshName} from './schema.js'

/**
 * By which word a name that no row of the items has is meat, poultry or fish, and of what item: “lamb cushion” is lamb. `stems` begin German
 * compounds: „Rindergulasch“. Common practice, no source.
 */
export const fleshNames: readonly FleshName[] = [
  {
    id: 'chicken',
    words: words('chicken, fowl, hen, capon, pullet, poultry, guinea fowl, geflügel, perlhuhn'),
    stems: words('hähnchen, hühner, huhn, geflügel, poularden'),
    source: 'common-practice',
  },
  {id: 'turkey', words: words('turkey'), stems: words('puten, truthahn'), source: 'common-practice'},
  {id: 'duck', words: words('duck, duckling'), stems: words('enten'), source: 'common-practice'},
  {id: 'goose', words: words('goose'), stems: words('gänse'), source: 'common-practice'},
  {id: 'pheasant', words: words('pheasant'), stems: words('fasanen'), source: 'common-practice'},
  {id: 'partridge', words: words('partridge, woodcock'), stems: words('rebhuhn'), source: 'common-practice'},
  {id: 'pigeon', words: words('pigeon, squab'), stems: words('tauben'), source: 'common-practice'},
  {id: 'grouse', words: words('grouse'), source: 'common-practice'},
  {
    id: 'beef',
    words: words('beef, steak, ox, sirloin, brisket, rump, topside, silverside'),
    stems: words('rinder, rinds, ochsen, roastbeef'),
    source: 'common-practice',
  },
  {id: 'veal', words: words('veal'), stems: words('kalbs, kalb'), source: 'common-practice'},
  {id: 'mutton', words: words('mutton, hogget'), stems: words('hammel'), source: 'common-practice'},
  {id: 'lamb', words: words('lamb, goat'), stems: words('lamm, zicklein'), source: 'common-practice'},
  {id: 'pork', words: words('pork, pig'), stems: words('schweine, schweins, ferkel'), source: 'common-practice'},
  {id: 'wild boar', words: words('boar'), stems: words('wildschwein'), source: 'common-practice'},
  {
    id: 'venison',
    words: words('venison, deer, elk, reindeer'),
    stems: words(
      'hirsch, rehkeule, rehrücken, rehragout, rehgulasch, rehfleisch, rehschulter, rehbraten, rehfilet, wildfleisch, wildgulasch, wildragout, wildbraten',
    ),
    source: 'common-practice',
  },
  {id: 'hare', words: words('hare'), stems: words('hasen'), source: 'common-practice'},
  {id: 'rabbit', words: words('rabbit'), stems: words('kaninchen'), source: 'common-practice'},
  {id: 'gammon joint', words: words('gammon'), stems: words('kasseler, kassler'), source: 'common-practice'},
  {id: 'ham', words: words('ham, prosciutto'), stems: words('schinken'), source: 'common-practice'},
  {id: 'bacon', words: words('bacon'), source: 'common-practice'},
  {id: 'sausage meat', words: words('sausage, chipolata, bratwurst, brät'), source: 'common-practice'},
  {id: 'salmon', words: words('salmon'), stems: words('lachs'), source: 'common-practice'},
  {id: 'trout', words: words('trout'), stems: words('forellen'), source: 'common-practice'},
  {id: 'cod', words: words('cod, hake, ling'), stems: words('kabeljau, dorsch'), source: 'common-practice'},
  {id: 'haddock', words: words('haddock'), stems: words('schellfisch'), source: 'common-practice'},
  {id: 'mackerel', words: words('mackerel'), stems: words('makrelen'), source: 'common-practice'},
  {
    id: 'herring',
    words: words('herring, kipper, sardine, sprat, pilchard'),
    stems: words('herings, sardinen, sprotten, matjes'),
    source: 'common-practice',
  },
  {id: 'tuna', words: words('tuna'), stems: words('thunfisch'), source: 'common-practice'},
  {id: 'eel', words: words('eel'), stems: words('aal'), source: 'common-practice'},
  {id: 'anchovy', words: words('anchovy'), stems: words('sardellen'), source: 'common-practice'},
  {id: 'carp', words: words('carp'), stems: words('karpfen'), source: 'common-practice'},
  {
    id: 'fish',
    words: words(
      'fish, plaice, sole, turbot, halibut, brill, bass, bream, pollock, pollack, coley, whiting, monkfish, swordfish, tilapia, catfish, snapper, grouper, mullet, pike, perch, zander, skate, sturgeon, shad, seelachs, steinbeißer',
    ),
    stems: words('fisch, seelachs, rotbarsch, zander, heilbutt, schollen, seezungen, hecht'),
    source: 'common-practice',
  },
  {id: 'crab', words: words('crab, langoustine, scampi'), source: 'common-practice'},
  {id: 'lobster', words: words('lobster'), stems: words('hummer'), source: 'common-practice'},
  {id: 'shrimp', words: words('shrimp, prawn'), stems: words('garnelen, krabben'), source: 'common-practice'},
  {id: 'oyster', words: words('oyster'), stems: words('austern'), source: 'common-practice'},
  {
    id: 'clam',
    words: words('clam, mussel, cockle, scallop, whelk, jakobsmuschel'),
    stems: words('muschel, miesmuschel'),
    source: 'common-practice',
  },
  {id: 'squid', words: words('squid, calamari, octopus'), stems: words('tintenfisch'), source: 'common-practice'},
  {id: 'liver', words: words('liver'), stems: words('leber'), source: 'common-practice'},
  {id: 'meat', words: words('meat, cutlet, escalope, game'), stems: words('hackfleisch, gulasch'), source: 'common-practice'},
]
