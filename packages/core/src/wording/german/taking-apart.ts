import type { SameWords } from '../catalogue.js';
import type { takingApartWords } from '../english/taking-apart.js';

/** German sentences about how a press joint comes apart, by code. */
export const germanTakingApartWords: SameWords<typeof takingApartWords> = {
  findings: {
    'joint-already-loose': { says: 'Nichts presst mehr: Im Durchmesser bleiben {gapUm} Spiel.' },
    'parts-by-force': { says: 'Sie löst sich bei etwa {lowForceN} bis {highForceN}; Rost verlangt mehr.' },
    'press-is-strong-enough': { says: 'Die Presse ({pressN}) ist stärker als die {lowForceN} bis {highForceN}, die nötig sein können.' },
    'press-may-be-too-weak': { says: 'Nötig sein können {lowForceN} bis {highForceN}; die Presse hat {pressN}.', todo: 'Zusätzlich die Nabe erwärmen oder eine stärkere Presse nehmen.' },
    'press-is-too-weak': { says: 'Nötig sind {lowForceN} bis {highForceN}; die Presse hat {pressN}.', todo: 'Die Nabe erwärmen oder eine stärkere Presse nehmen.' },
    'comes-free-by-heat': { says: 'Mit der Nabe bei {hubFreeC} und noch kalter Welle kommt sie frei (Grenze {hubLimitC}).', todo: 'Schnell und gleichmäßig erwärmen und sofort abziehen.' },
    'does-not-come-free-by-heat': { says: 'Wärme allein löst sie nicht: Die Nabe bräuchte {hubFreeC}, ihre Grenze liegt bei {hubLimitC}.' },
    'heat-limit-unknown': { says: 'Die Nabe käme bei {hubFreeC} frei; wie heiß sie werden darf, ist nicht bekannt.' },
  },
  assumed: {
    'press-reserve': 'Kraft der Presse über der Schätzung',
    'friction-after-standing': 'Reibung beim Lösen, als Vielfaches der beim Fügen',
    'gap-when-free': 'Spiel, bei dem die Nabe von selbst freikommt',
  },
  effects: {
    'which-press': 'welche Presse genügt',
  },
};
