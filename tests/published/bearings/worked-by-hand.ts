import { bearingSeat } from '@seatwright/core/bearing';
import type { Entry, Sheet } from '../ledger/sheet.js';

type Asked = Parameters<typeof bearingSeat.run>[0];

const byHand = (row: string, column: string, printed: string, ours: () => number | null | undefined): Entry => ({ row, column, printed, how: 'by hand', ours: () => [ours()] });
const bearingSteel = { youngsModulusGpa: 206, poissonRatio: 0.3, expansionPerK: 11.5e-6 };
const seat = (asked: Asked) => bearingSeat.run(asked);

const thickAluminium = { housingMaterial: { youngsModulusGpa: 71, poissonRatio: 0.33, expansionPerK: 23e-6 }, ringMaterial: bearingSteel, shaftMaterial: bearingSteel };
const looseFrom = (housingClass: string) => seat({ designation: '6203', shaftClass: 'k5', housingClass, ...thickAluminium }).housingSeat?.looseFromC;
const of6203 = (extra: Partial<Asked> = {}) => seat({ designation: '6203', shaftClass: 'k5', housingClass: 'H7', housingMaterial: 'gjl250', shaftMaterial: bearingSteel, ringMaterial: bearingSteel, ...extra }).shaftSeat;
const fits = (designation: string, shaftClass: string, housingClass: string) => seat({ designation, shaftClass, housingClass, housingMaterial: 'gjl250' });

const resultant = (designation: string, shaftClass: string, housingClass: string, [shaftLeast, shaftMost, housingLeast, housingMost]: readonly [string, string, string, string]): readonly Entry[] => [
  byHand(`${designation} ${shaftClass}, shaft`, 'least interference', shaftLeast, () => fits(designation, shaftClass, housingClass).shaftSeat?.at20C.leastInterferenceUm),
  byHand(`${designation} ${shaftClass}, shaft`, 'most interference', shaftMost, () => fits(designation, shaftClass, housingClass).shaftSeat?.at20C.mostInterferenceUm),
  byHand(`${designation} ${housingClass}, housing`, 'least interference', housingLeast, () => fits(designation, shaftClass, housingClass).housingSeat?.at20C.leastInterferenceUm),
  byHand(`${designation} ${housingClass}, housing`, 'most interference', housingMost, () => fits(designation, shaftClass, housingClass).housingSeat?.at20C.mostInterferenceUm),
];

const common = { kind: 'worked example', allowed: 'printed digits', layout: 'list' } as const;

/** Formulas of bearing handbooks at single points, worked by hand from printed deviations. */
export const workedByHand: readonly Sheet[] = [
  {
    ...common, work: 'bearing-handbook-reprints', place: 'shaft and housing tolerances: resultant fits', title: 'Interference of the fit, Normal class', unit: 'µm', asked: 'bearing seat at 20 °C',
    note: 'From printed deviations: bore 17 (0, −8), k5 (+9, +1); outside 40 (0, −11), J7 (+14, −11), K7 (+7, −18).',
    entries: [...resultant('6203', 'k5', 'J7', ['1', '17', '-25', '11']), ...resultant('6203', 'k5', 'K7', ['1', '17', '-18', '18']).slice(2), ...resultant('6208', 'k5', 'H7', ['2', '25', '-43', '0'])],
  },
  {
    ...common, work: 'bearing-handbook-reprints', place: 'fitting surface pressure; growth of the raceway', title: '6203 on a solid shaft, k5, most interference 17 µm smoothed to 17·17/19', unit: 'µm, MPa', asked: 'bearing seat, E 206 GPa',
    entries: [
      byHand('raceway', 'growth k·I, k = 17/21.6 [µm]', '11.971', () => of6203()?.racewayChangeUm.high),
      byHand('inner ring', 'pressure (E/2)(I/d)(1 − k²) [MPa]', '35.073', () => of6203()?.contactPressureMpa.high),
    ],
  },
  { ...common, work: 'japanese-bearing-handbook', place: '10.3.3', title: 'Interference that a load of 800 N takes: 0.08·√(17·800/12)', unit: 'µm', asked: 'bearing seat of 6203', entries: [byHand('6203', 'lost to the load', '2.693', () => of6203({ radialLoadN: 800 })?.interferenceLostToLoadUm)] },
  {
    ...common, work: 'bearing-handbook-reprints', place: 'housing of other metal', title: '6203 in thick aluminium: 40 mm, 23 against 11.5 µm/(m·K), 0.46 µm for each kelvin', unit: '°C', asked: 'bearing seat: loose from',
    entries: [
      byHand('H7', 'earliest', '20.0', () => looseFrom('H7')?.earliest),
      byHand('H7', 'latest', '20.0', () => looseFrom('H7')?.latest),
      byHand('N7', 'earliest', '20.0', () => looseFrom('N7')?.earliest),
      byHand('N7', 'latest', '91.7', () => looseFrom('N7')?.latest),
      byHand('P7', 'earliest', '33.0', () => looseFrom('P7')?.earliest),
      byHand('P7', 'latest', '111.3', () => looseFrom('P7')?.latest),
    ],
  },
];
