import type { Catalogue } from '../catalogue.js';

/** Sentences of the room's findings, assumptions and gaps, by code. */
export const measuresWords: Pick<Catalogue, 'findings' | 'notChecked' | 'assumed' | 'effects' | 'readings'> = {
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
  },
  notChecked: {
    'form-between-readings': 'What the part does between the places that were read is not in the uncertainty.',
    'temperature-in-uncertainty': 'Temperature of part and instrument: taken as 20 °C, and not in the uncertainty.',
    'repeatability-of-every-set': 'How well the hand repeats a reading: not every instrument was read twice at one place.',
    'odd-lobes': 'Lobes of odd number (three, five …): measuring across two points does not see them. A V-block and a dial do.',
  },
  assumed: {
    'two-point-contact': 'How the instrument touches',
    'waviness-steps': 'Steps of the instrument that readings may spread over',
    'outlier-false-alarm': 'Chance of a false alarm about a reading that stands apart',
    'instrument-expansion': 'Expansion of the instrument, steel',
    'part-expansion-scatter': "Scatter of the part's expansion coefficient",
    'instrument-temperature-as-part': 'Temperature of the instrument, taken from the part',
    'temperature-uncertainty': 'How well the temperatures are known, plus or minus',
  },
  effects: {
    'oval-and-its-direction': 'the oval and its direction',
    'called-wavy': 'whether the surface is called wavy',
    'called-outlier': 'whether a reading is said to stand apart',
    'size-at-20-c': 'the size at 20 °C and its uncertainty',
  },
  readings: {},
};
