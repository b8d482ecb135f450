import type { SameWords } from '../catalogue.js';
import type { sizesAndHeatWords } from '../english/sizes-and-heat.js';

/** German sentences about the search for a listed size, and the heat that a lip makes, by code. */
export const germanSizesAndHeatWords: SameWords<typeof sizesAndHeatWords> = {
  findings: {
    'size-is-listed': { says: '{sizeCount} {sizeCount|gelistetes Maß passt|gelistete Maße passen} zu Welle und Bohrung. Die Listen stammen aus dem Gedächtnis: Es gilt das gemessene Teil.' },
    'size-not-listed': { says: 'Kein gelistetes Maß passt zu Welle und Bohrung zugleich. Die Listen stammen aus dem Gedächtnis: Es gilt das gemessene Teil.', todo: 'Die Aufschrift des alten Rings lesen; die benachbarten Maße ansehen.' },
    'inch-size-suspected': { says: 'Das sieht nach Zollmaßen aus: Welle {shaftInches}, Bohrung {boreInches}.', todo: 'Einen Ring in Zollmaß verlangen; ein ähnlicher metrischer ist nicht derselbe.' },
    'inch-seal-grips-more': { says: 'Die Welle ({measuredMm}) hat nicht {fraction}: Ein Ring für dieses Zollmaß säße um {differenceMm} strammer auf der Welle.' },
    'inch-seal-grips-less': { says: 'Die Welle ({measuredMm}) hat nicht {fraction}: Ein Ring für dieses Zollmaß säße um {differenceMm} schlaffer auf der Welle.' },
    'inch-seal-sits-looser': { says: 'Die Bohrung ({measuredMm}) hat nicht {fraction}: Ein Ring für dieses Zollmaß säße um {differenceMm} lockerer.' },
    'inch-seal-sits-tighter': { says: 'Die Bohrung ({measuredMm}) hat nicht {fraction}: Ein Ring für dieses Zollmaß säße um {differenceMm} fester.' },
    'size-shaft-a-little-off': { says: 'Die Welle weicht um {differenceMm} von {markedMm} ab; für dieses Maß ist keine Überdeckung der Lippe veröffentlicht.' },
    'size-for-another-shaft': { says: 'Der Ring ist für eine Welle von {markedMm}, Abweichung {differenceMm}: nur mit Hülse oder nachgeschliffener Welle.' },
    'size-lip-stretched': { says: 'Die Welle liegt um {differenceMm} über {markedMm}: Die Lippe überdeckt um {lipLowMm} bis {lipHighMm} und läuft heißer.' },
    'size-lip-slack': { says: 'Die Welle liegt um {differenceMm} unter {markedMm}: Die Lippe überdeckt nur um {lipLowMm} bis {lipHighMm}.' },
    'size-for-another-bore': { says: 'Der Ring ist für eine Bohrung von {markedMm}, Abweichung {differenceMm}: nur mit Buchse oder ausgebohrtem Gehäuse.' },
    'size-outside-may-be-loose': { says: 'Die Bohrung liegt um {differenceMm} über {markedMm}: Der Außenmantel kann lose sein ({leastUm} bis {mostUm} Übermaß).' },
    'size-outside-holds-less': { says: 'Die Bohrung liegt um {differenceMm} über {markedMm}: Der Außenmantel hält mit {leastUm} bis {mostUm}.' },
    'size-outside-very-tight': { says: 'Die Bohrung liegt um {differenceMm} unter {markedMm}: Der Außenmantel hat {leastUm} bis {mostUm} Übermaß.' },
    'lip-makes-heat': { says: 'Die Lippe macht etwa {lowPowerW} bis {highPowerW} zu Wärme (veröffentlichte Schätzungen für Getriebe in Öl).' },
  },
  notChecked: {
    'running-in': 'Die ersten Stunden: Eine neue Lippe reibt stärker, bis sie eingelaufen ist.',
    'sizes-beyond-the-lists': 'Maße, die Hersteller neben den Listen führen, und ob ein gelistetes Maß zu haben ist.',
  },
  assumed: {
    'lip-hotter-than-fluid': 'Lippe heißer als das Medium',
  },
  effects: {
    'which-size': 'welche Maße als passend gelten',
    'how-hot-the-lip-runs': 'wie heiß die Lippe läuft',
  },
};
