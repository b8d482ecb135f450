/** Sentences of the room's findings, assumptions and gaps, by code. */
export const measuresWords = {
  findings: {
    'reading-stands-apart': {
      says: 'One reading, {readingMm}, stands apart from the others (mean {meanMm}): {distanceRatio} times their spread, where chance allows {criticalRatio}.',
      todo: 'Wipe the place and the jaws, look for a burr or a nick, and read there again before leaving anything out.',
    },
    'instruments-disagree': {
      says: 'Two instruments do not tell the same size: {instrument} reads {lowMm}, {otherInstrument} reads {highMm}. That is {apartMm} apart; their errors explain {allowedMm}.',
      todo: 'Check both on one gauge or a new bearing ring, then read again with the one that is right.',
    },
    'no-ovality-from-this-contact': {
      says: 'Readings with this contact ({contact}) differ by {spreadUm}, but they do not show how oval the part is.',
      todo: 'Measure across two opposite points, at three directions or more, to see an oval.',
    },
    'oval-with-direction': { says: 'It is oval by {ovalityUm}; the largest diameter lies at {largestAtDeg}.' },
    'surface-wavy': {
      says: 'More than an oval and a taper is in the surface: the readings still spread over {spreadUm} where {limitUm} would pass.',
      todo: 'Clean the surface and read at more directions; look for wear steps, dents or rust.',
    },
    'too-few-readings': {
      says: 'With {readingCount} readings their scatter is hardly known, so the uncertainty is wide: ± {uncertaintyMm} (factor {coverageFactor} instead of 2).',
      todo: 'Read two or three times more at the same place.',
    },
    'size-corrected-to-20-c': {
      says: 'At 20 °C the part measures {sizeAt20CMm}, not {meanMm}: temperature moves the reading by {correctionUm}.',
      todo: 'Compare {sizeAt20CMm} with the drawing; let part and instrument lie side by side for an hour where you can.',
    },
    'size-conforms': { says: 'Within the limits, proven: {sizeMm} keeps clear of the nearer limit {limitMm} by more than the guard band of {guardBandMm}.' },
    'size-below-lower-limit': {
      says: 'Too small, proven: {sizeMm} lies below {limitMm} by more than the uncertainty of the reading explains.',
      todo: 'Read once more where it is smallest; if it stays, the part is out.',
    },
    'size-above-upper-limit': {
      says: 'Too large, proven: {sizeMm} lies above {limitMm} by more than the uncertainty of the reading explains.',
      todo: 'Read once more where it is largest; if it stays, the part is out.',
    },
    'size-not-provable-at-lower-limit': {
      says: 'You cannot tell with this reading: {sizeMm} is good to ± {uncertaintyMm}, and the lower limit {limitMm} lies within that. Chance that the part keeps its limits: {conformityPercent}.',
      todo: 'Measure with something finer, or settle by what the part must do. Who has to prove it carries the uncertainty.',
    },
    'size-not-provable-at-upper-limit': {
      says: 'You cannot tell with this reading: {sizeMm} is good to ± {uncertaintyMm}, and the upper limit {limitMm} lies within that. Chance that the part keeps its limits: {conformityPercent}.',
      todo: 'Measure with something finer, or settle by what the part must do. Who has to prove it carries the uncertainty.',
    },
    'other-instrument-would-decide': {
      says: 'It would decide with another instrument: {decider} is good to ± {deciderUncertaintyMm}; this reading ({instrument}) only to ± {uncertaintyMm}.',
      todo: 'Read again with that, if it shows about the same size.',
    },
    'steadier-readings-would-decide': {
      says: '{instrument} itself would decide (± {deciderUncertaintyMm}); the scatter of your readings makes it ± {uncertaintyMm}.',
      todo: 'Wipe part and instrument, rock it in to the largest or smallest reading, and read three times at each place.',
    },
    'no-listed-instrument-decides': {
      says: 'No instrument of the list would settle a size so near to its limit.',
      todo: 'Have it measured in a measuring room, or take the part as unproven.',
    },
    'no-reading-could-prove-it': {
      says: 'Whatever it shows, this reading ({instrument}, ± {uncertaintyMm}) could never prove a tolerance of {toleranceMm}: it can only tell a part that is clearly out.',
    },
    'instrument-coarse-for-tolerance': {
      says: 'For a tolerance of {toleranceMm} the uncertainty should be {wantedMm} or less; this one is {uncertaintyMm} ({instrument}). The cheapest that serves: {decider}, ± {deciderUncertaintyMm}.',
    },
    'no-listed-instrument-for-tolerance': {
      says: 'For a tolerance of {toleranceMm} the uncertainty should be {wantedMm} or less; this one is {uncertaintyMm} ({instrument}), and no instrument of the list is that good.',
      todo: 'Compare with a setting ring or a gauge of nearly the same size; that takes most of the error away.',
    },
  },
  notChecked: {
    'parts-picked-independently': 'Whether holes and shafts are picked independently: parts sorted into pairs fit better than this.',
    'process-before-measuring': 'What is known of such parts before measuring (how they are made or how they wear) would shift the chance; it was not counted.',
    'hand-in-uncertainty': 'How well the hand repeats a reading: nothing was read twice at one place.',
    'other-instruments-in-decision': 'Readings of the other instruments: the decision rests on the finest one.',
    'form-from-one-reading': 'Oval and taper: there is one reading only.',
    'form-between-readings': 'What the part does between the places that were read is not in the uncertainty.',
    'temperature-in-uncertainty': 'Temperature of part and instrument: taken as 20 °C, and not in the uncertainty.',
    'repeatability-of-every-set': 'How well the hand repeats a reading: not every instrument was read twice at one place.',
    'odd-lobes': 'Lobes of odd number (three, five …): measuring across two points does not see them. A V-block and a dial do.',
  },
  assumed: {
    'spread-of-hole': 'How holes spread between their limits',
    'spread-of-shaft': 'How shafts spread between their limits',
    'deviations-to-limit-of-hole': 'Standard deviations of holes from the peak to the nearer limit',
    'deviations-to-limit-of-shaft': 'Standard deviations of shafts from the peak to the nearer limit',
    'guard-band-rule': 'Rule of decision: the whole expanded uncertainty is kept off the limits',
    'uncertainty-share': 'Share of the tolerance that the uncertainty may take',
    'two-point-contact': 'How the instrument touches',
    'waviness-steps': 'Steps of the instrument that readings may spread over',
    'outlier-false-alarm': 'Chance of a false alarm about a reading that stands apart',
    'instrument-expansion': 'Expansion of the instrument, steel',
    'part-expansion-scatter': "Scatter of the part's expansion coefficient",
    'instrument-temperature-as-part': 'Temperature of the instrument, taken from the part',
    'temperature-uncertainty': 'How well the temperatures are known, plus or minus',
  },
  effects: {
    'spread-of-fit': 'how often the fit is loose or too tight',
    'decision-on-size': 'what counts as proven',
    'instrument-for-tolerance': 'which instrument is called good enough for the tolerance',
    'oval-and-its-direction': 'the oval and its direction',
    'called-wavy': 'whether the surface is called wavy',
    'called-outlier': 'whether a reading is said to stand apart',
    'size-at-20-c': 'the size at 20 °C and its uncertainty',
  },
  readings: {},
  values: { 'stated-uncertainty': 'uncertainty as stated', 'three-point': 'three-point', 'v-block': 'V-block', 'expanded-uncertainty': 'the whole expanded uncertainty', 'probability-95': 'a chance of 95 %' },
} as const;
