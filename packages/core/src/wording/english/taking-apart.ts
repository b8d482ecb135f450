/** English sentences about how a press joint comes apart, by code. */
export const takingApartWords = {
  findings: {
    'joint-already-loose': { says: 'Nothing presses: the parts stand {gapUm} apart on the diameter.' },
    'parts-by-force': { says: 'It parts under some {lowForceN} to {highForceN}; rust asks for more.' },
    'press-is-strong-enough': { says: 'The press ({pressN}) is stronger than the {lowForceN} to {highForceN} that it may take.' },
    'press-may-be-too-weak': { says: 'It may take {lowForceN} to {highForceN}; the press has {pressN}.', todo: 'Heat the hub as well, or use a stronger press.' },
    'press-is-too-weak': { says: 'It takes {lowForceN} to {highForceN}; the press has {pressN}.', todo: 'Heat the hub, or use a stronger press.' },
    'comes-free-by-heat': { says: 'With the hub at {hubFreeC} and the shaft still cold it comes free (limit {hubLimitC}).', todo: 'Heat fast and evenly, and pull at once.' },
    'does-not-come-free-by-heat': { says: 'Heat alone does not free it: the hub would need {hubFreeC}, its limit is {hubLimitC}.' },
    'heat-limit-unknown': { says: 'The hub would come free at {hubFreeC}; how hot it may be made is not known.' },
  },
  assumed: {
    'press-reserve': 'Strength of the press over the estimate',
    'friction-after-standing': 'Friction on the way apart, times that on the way together',
    'gap-when-free': 'Gap at which the hub comes free by itself',
  },
  effects: {
    'which-press': 'which press will do',
  },
} as const;
