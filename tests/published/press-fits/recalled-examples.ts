import { joiningTemperature, pressJoint, ringStack } from '@seatwright/core/joint';
import { inchFit } from '@seatwright/core/tolerance';
import type { Allowed, Entry, Sheet } from '../ledger/sheet.js';
import { oneSteel, psi, rigid, steelOf } from './two-rings.js';

const common = { kind: 'worked example', allowed: 'printed digits', layout: 'list' } as const;
const recalledValue = (row: string, column: string, printed: string, ours: () => number | null | undefined, allowed?: Allowed): Entry => ({ row, column, printed, how: 'memory', ours: () => [ours()], ...(allowed === undefined ? {} : { allowed }) });
const toTheHalf: Allowed = { difference: 0.25, why: 'the book rounds to the half' };

/** Bansal: two rings 200/250/300 mm, 8 N/mm² at the junction. */
function bansalHoop(at: 0 | 1 | 2 | 3): number | null {
  const steel = steelOf(200, 0.3);
  const { rings } = ringStack.run({ rings: [{ insideMm: 200, outsideMm: 250, material: steel }, { insideMm: 250, outsideMm: 300, material: steel }], interferencesUm: [8 / oneSteel(200, 250, 300, 1).contactPressureMpa] });
  return rings.flatMap(({ hoopStressMpa }) => [hoopStressMpa.bore, hoopStressMpa.outside])[at] ?? null;
}

const hearn = () => oneSteel(200, 250, 300, 10 / oneSteel(200, 250, 300, 1).contactPressureMpa);

const onAluminium = () =>
  pressJoint.run({ jointDiameterMm: 200, shaftBoreMm: 0, hubOutsideMm: 300, lengthMm: 10, interferenceUm: 500, shaft: steelOf(200, 0.29), hub: steelOf(72, 0.33, 2.36e-5) });

const bushing = () =>
  pressJoint.run({ jointDiameterMm: '2.5 in', shaftBoreMm: '2 in', hubOutsideMm: '3.5 in', lengthMm: '1 in', interferenceUm: '3.2 thou', shaft: steelOf(17e6 * psi * 1e-3, 0.27, 1.8e-5), hub: steelOf(30e6 * psi * 1e-3, 0.27) });

/** Tyre on a rigid wheel for a hoop stress of 100 MPa: by the thin ring the interference is d·σ/E. */
function tyre(wheelMm: number, expansionPerK: number): { readonly tyreMm: number; readonly hoopMpa: number; readonly kelvins: number } {
  const hub = steelOf(200, 0.3, expansionPerK);
  const interferenceUm = ((wheelMm * 100) / 200_000) * 1000;
  const thin = pressJoint.run({ jointDiameterMm: wheelMm, shaftBoreMm: 0, hubOutsideMm: wheelMm * 1.0002, lengthMm: 90, interferenceUm, shaft: rigid, hub });
  const { outerPartC } = joiningTemperature.run({ jointDiameterMm: wheelMm, interferenceUm, joiningClearanceUm: 0, outerMaterial: hub, innerMaterial: rigid, ambientC: 20, outerLimitC: 300 });
  return { tyreMm: wheelMm - interferenceUm / 1000, hoopMpa: thin.hubHoopStressMpa, kelvins: outerPartC - 20 };
}

const heated = () => joiningTemperature.run({ jointDiameterMm: 50, interferenceUm: 144, joiningClearanceUm: 50, outerMaterial: steelOf(200, 0.29), innerMaterial: steelOf(200, 0.29), ambientC: 20, outerLimitC: 400 }).outerPartC - 20;

const tyreEntries = (wheelMm: number, expansionPerK: number, tyreMm: string, kelvins: string): readonly Entry[] => [
  recalledValue('tyre', 'bore [mm]', tyreMm, () => tyre(wheelMm, expansionPerK).tyreMm),
  recalledValue('tyre', 'hoop stress [MPa]', '100', () => tyre(wheelMm, expansionPerK).hoopMpa),
  recalledValue('tyre', 'heat [K]', kelvins, () => tyre(wheelMm, expansionPerK).kelvins),
];

export const recalled: readonly Sheet[] = [
  {
    ...common, work: 'timoshenko-strength-2', place: 'radii 4/6/8 in, 0.005 in on the radius', title: 'Pressure', unit: 'psi', asked: 'press joint',
    entries: [recalledValue('joint', 'pressure', '4050', () => oneSteel(8 * 25.4, 12 * 25.4, 16 * 25.4, 254, steelOf(30e6 * psi * 1e-3, 0.3)).contactPressureMpa / psi, { difference: 5, why: 'three figures' })],
  },
  {
    ...common, work: 'boresi-schmidt', place: 'example 11.3: radii 10/25/50 mm, 0.072 mm on the radius', title: 'Pressure, and heat for 0.025 mm of clearance on the radius', unit: 'MPa, K', asked: 'press joint and joining temperature', note: 'The clearance was read on a page.',
    entries: [recalledValue('joint', 'pressure [MPa]', '189', () => oneSteel(20, 50, 100, 144, steelOf(200, 0.29)).contactPressureMpa), recalledValue('hub', 'heat [K]', '331.6', heated)],
  },
  { ...common, work: 'bansal-strength', place: 'compound cylinder 150/250/300 mm, 28 N/mm² at the junction', title: 'Difference of the radii', unit: 'mm', asked: 'press joint', entries: [recalledValue('junction', 'on the radius', '0.13', () => 28 / oneSteel(150, 250, 300, 1).contactPressureMpa / 2000)] },
  {
    ...common, work: 'bansal-strength', place: 'compound cylinder 200/250/300 mm, 8 N/mm² at the junction', title: 'Hoop stress', unit: 'MPa', asked: 'stack of two rings',
    entries: [recalledValue('inner', 'bore', '-44.44', () => bansalHoop(0)), recalledValue('inner', 'junction', '-36.44', () => bansalHoop(1)), recalledValue('outer', 'junction', '44.36', () => bansalHoop(2)), recalledValue('outer', 'outside', '36.36', () => bansalHoop(3))],
  },
  {
    ...common, work: 'hearn-mechanics-1', place: 'compound tubes 250 × 25 mm, 10 MN/m² at the junction', title: 'Hoop stress', unit: 'MPa', asked: 'press joint',
    entries: [recalledValue('outer', 'junction', '55.5', () => hearn().hubHoopStressMpa, toTheHalf), recalledValue('inner', 'bore', '-55.5', () => hearn().shaftHoopStressMpa.bore, toTheHalf), recalledValue('inner', 'junction', '-45.5', () => hearn().shaftHoopStressMpa.surface, toTheHalf)],
  },
  {
    ...common, work: 'ugural-fenster', place: 'aluminium cylinder 300/200 mm on a steel shaft of 200.5 mm', title: 'Pressure and growth', unit: 'MPa, mm', asked: 'press joint',
    entries: [recalledValue('joint', 'pressure [MPa]', '56.5', () => onAluminium().contactPressureMpa), recalledValue('outside', 'growth on the diameter [mm]', '0.377', () => onAluminium().hubOutsideGrowthUm / 1000)],
  },
  {
    ...common, work: 'mott-machine-elements', place: 'example 13-2: bronze bushing 2.0/2.5 in, steel sleeve 3.5 in, FN3', title: 'Interference, pressure and stress', unit: 'thou, psi', asked: 'inch fit and press joint',
    entries: [recalledValue('fit', 'most interference [thou]', '3.2', () => -inchFit.run({ nominalIn: 2.5, fitClass: 'FN3' }).minimumThou), recalledValue('joint', 'pressure [psi]', '3518', () => bushing().contactPressureMpa / psi), recalledValue('sleeve', 'hoop stress [psi]', '10846', () => bushing().hubHoopStressMpa / psi)],
  },
  { ...common, work: 'khurmi-gupta', place: 'locomotive tyre on a wheel of 1.2 m, 100 MPa', title: 'Bore and heat', unit: 'mm, MPa, K', asked: 'press joint of a very thin ring, joining temperature', entries: tyreEntries(1200, 6.5e-6, '1199.4', '77') },
  { ...common, work: 'bansal-strength', place: 'tyre on a wheel of 1 m, 100 MPa', title: 'Bore and heat', unit: 'mm, MPa, K', asked: 'press joint of a very thin ring, joining temperature', entries: tyreEntries(1000, 12e-6, '999.5', '42') },
];
