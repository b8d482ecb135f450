/** English sentences about the search for a listed size, and the heat that a lip makes, by code. */
export const sizesAndHeatWords = {
  findings: {
    'size-is-listed': { says: '{sizeCount} listed {sizeCount|size fits|sizes fit} shaft and bore. The lists are held from memory: the measured part decides.' },
    'size-not-listed': { says: 'No listed size fits shaft and bore both. The lists are held from memory: the measured part decides.', todo: 'Read what is printed on the old seal; look at the near sizes.' },
    'inch-size-suspected': { says: 'These look like inch sizes: shaft {shaftInches}, bore {boreInches}.', todo: 'Ask for a seal in inches; a metric one near it is not the same.' },
    'inch-seal-grips-more': { says: 'The shaft ({measuredMm}) is not {fraction}: a seal for that inch size would grip {differenceMm} more.' },
    'inch-seal-grips-less': { says: 'The shaft ({measuredMm}) is not {fraction}: a seal for that inch size would grip {differenceMm} less.' },
    'inch-seal-sits-looser': { says: 'The bore ({measuredMm}) is not {fraction}: a seal for that inch size would sit {differenceMm} looser.' },
    'inch-seal-sits-tighter': { says: 'The bore ({measuredMm}) is not {fraction}: a seal for that inch size would sit {differenceMm} tighter.' },
    'size-shaft-a-little-off': { says: 'The shaft is {differenceMm} off {markedMm}; no lip interference is published for this size.' },
    'size-for-another-shaft': { says: 'It is made for a shaft of {markedMm}, {differenceMm} off: only with a sleeve or a reground shaft.' },
    'size-lip-stretched': { says: 'The shaft is {differenceMm} over {markedMm}: the lip grips with {lipLowMm} to {lipHighMm} and runs hotter.' },
    'size-lip-slack': { says: 'The shaft is {differenceMm} under {markedMm}: the lip grips with only {lipLowMm} to {lipHighMm}.' },
    'size-for-another-bore': { says: 'It is made for a bore of {markedMm}, {differenceMm} off: only with a sleeve or a bored housing.' },
    'size-outside-may-be-loose': { says: 'The bore is {differenceMm} over {markedMm}: the outside may be loose ({leastUm} to {mostUm} of interference).' },
    'size-outside-holds-less': { says: 'The bore is {differenceMm} over {markedMm}: the outside holds with {leastUm} to {mostUm}.' },
    'size-outside-very-tight': { says: 'The bore is {differenceMm} under {markedMm}: the outside is {leastUm} to {mostUm} tight.' },
    'lip-makes-heat': { says: 'The lip turns some {lowPowerW} to {highPowerW} into heat (published estimates, made for gear units in oil).' },
  },
  notChecked: {
    'running-in': 'The first hours: a new lip rubs harder until it has run in.',
    'sizes-beyond-the-lists': 'Sizes that makers hold beside the lists, and whether a listed size is to be had.',
  },
  assumed: {
    'lip-hotter-than-fluid': 'Lip hotter than the fluid',
  },
  effects: {
    'which-size': 'which sizes count as fitting',
    'how-hot-the-lip-runs': 'how hot the lip runs',
  },
} as const;
