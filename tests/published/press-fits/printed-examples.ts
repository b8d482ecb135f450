import { pressJoint, ringStack } from '@seatwright/core/joint';
import { toleranceZone } from '@seatwright/core/tolerance';
import type { Allowed, Entry, Sheet } from '../ledger/sheet.js';
import { oneSteel, psi, rigid, steelOf } from './two-rings.js';

const common = { kind: 'worked example', allowed: 'printed digits', layout: 'list' } as const;
const page = (row: string, column: string, printed: string, ours: () => number | undefined, allowed?: Allowed): Entry => ({ row, column, printed, how: 'page', ours: () => [ours()], ...(allowed === undefined ? {} : { allowed }) });

const zone = (nominalMm: number, toleranceClass: string) => toleranceZone.run({ nominalMm, toleranceClass });
const collar = (interferenceUm: number) => oneSteel(0, 40, 80, interferenceUm, steelOf(207, 0.292)).contactPressureMpa;
const core = oneSteel(0, 50.8, 76.2, 25.4, steelOf(30e6 * psi * 1e-3, 0.292));
const fourFigures: Allowed = { difference: 5, why: 'four figures printed' };

/** Example 8.8.15: rings of radii 200, 250 and 300 mm shrunk to 6 MPa, then 80 MPa of fluid by Lamé's formula as the book adds it. */
function compound(): readonly number[] {
  const steel = steelOf(200, 0.3, 1.2e-5);
  const { rings } = ringStack.run({ rings: [{ insideMm: 400, outsideMm: 500, material: steel }, { insideMm: 500, outsideMm: 600, material: steel }], interferencesUm: [6 / oneSteel(400, 500, 600, 1, steel).contactPressureMpa] });
  const fluid = (radius: number) => ((80 * 200 ** 2) / (300 ** 2 - 200 ** 2)) * (1 + (300 / radius) ** 2);
  const [inner, outer] = rings;
  return [(inner?.hoopStressMpa.bore ?? 0) + fluid(200), (inner?.hoopStressMpa.outside ?? 0) + fluid(250), (outer?.hoopStressMpa.bore ?? 0) + fluid(250), (outer?.hoopStressMpa.outside ?? 0) + fluid(300)];
}

/** The book's C is the shaft's part of the yield over the hub's, each by its own modulus: read back from our pressure. */
function shrinkageFactor(hubPsi: number, hubNu: number): number {
  const shaft = steelOf(30e6 * psi * 1e-3, 1 / 3);
  const hub = steelOf(hubPsi * psi * 1e-3, hubNu);
  const { contactPressureMpa } = pressJoint.run({ jointDiameterMm: 100, shaftBoreMm: 0, hubOutsideMm: 200, lengthMm: 10, interferenceUm: 100, shaft, hub });
  const total = 100 / 1000 / 100 / contactPressureMpa;
  const ofHub = ((200 ** 2 + 100 ** 2) / (200 ** 2 - 100 ** 2) + hubNu) / (hub.youngsModulusGpa * 1000);
  return ((total - ofHub) / ofHub) * (shaft.youngsModulusGpa / hub.youngsModulusGpa);
}

/** The book takes a thin tyre on a rigid wheel; ours is a thick ring on a core of 1 000 GPa. Lamé gives the factor between the two, Co + Ci·Eo/Ei, about 1 %. */
function tyre(): { readonly pressureMpa: number; readonly hoopForceN: number } {
  const { contactPressureMpa, hubHoopStressMpa } = pressJoint.run({ jointDiameterMm: 2000, shaftBoreMm: 0, hubOutsideMm: 2024, lengthMm: 90, interferenceUm: 0, shaft: rigid, hub: steelOf(200, 0.3), shaftTemperatureC: 20, hubTemperatureC: 20 - 55 });
  const thick = (2024 ** 2 + 2000 ** 2) / (2024 ** 2 - 2000 ** 2);
  const yielding = thick + 0.3 + 200 / 1000;
  return { pressureMpa: contactPressureMpa * yielding * (12 / 1000), hoopForceN: hubHoopStressMpa * (yielding / thick) * 12 * 90 };
}

const inch = (um: number | undefined) => 2 + (um ?? Number.NaN) / 25_400;

export const printed: readonly Sheet[] = [
  {
    ...common, work: 'shigley-8', place: "solutions manual, problem 3-66: 40H7/u6 collar of 80 mm on a solid shaft", title: 'Limits of size, interference and pressure', unit: 'mm, MPa', asked: 'zones and press joint, E 207 GPa, ν 0.292', note: 'Limits and pressures read on the page; that the collar is 80 mm and E 207 GPa is recalled.',
    entries: [
      page('hole', 'largest', '40.025', () => zone(40, 'H7').upperLimitOfSizeMm, { difference: 0, why: 'a limit of size' }),
      page('hole', 'smallest', '40.000', () => zone(40, 'H7').lowerLimitOfSizeMm, { difference: 0, why: 'a limit of size' }),
      page('shaft', 'largest', '40.076', () => zone(40, 'u6').upperLimitOfSizeMm, { difference: 0, why: 'a limit of size' }),
      page('shaft', 'smallest', '40.060', () => zone(40, 'u6').lowerLimitOfSizeMm, { difference: 0, why: 'a limit of size' }),
      page('radial interference', 'most', '0.038', () => (zone(40, 'u6').upperLimitOfSizeMm - zone(40, 'H7').lowerLimitOfSizeMm) / 2),
      page('radial interference', 'least', '0.0175', () => (zone(40, 'u6').lowerLimitOfSizeMm - zone(40, 'H7').upperLimitOfSizeMm) / 2),
      page('pressure', 'most', '147.5', () => collar(76)),
      page('pressure', 'least', '67.9', () => collar(35)),
    ],
  },
  {
    ...common, work: 'shigley-8', place: 'solutions manual, problem 5-34 b: core of 2 in in a tube of 3 in, 0.0005 in on the radius', title: 'Pressure and stresses', unit: 'psi', asked: 'press joint, E 30·10⁶ psi, ν 0.292',
    entries: [
      page('pressure', 'at the joint', '4167', () => core.contactPressureMpa / psi),
      page('tube, bore', 'hoop stress', '10830', () => core.hubHoopStressMpa / psi, fourFigures),
      page('tube, bore', 'von Mises', '13410', () => core.hubVonMisesMpa / psi, fourFigures),
      page('core', 'von Mises', '4167', () => core.shaftVonMisesMpa / psi),
    ],
  },
  {
    ...common, work: 'bhavikatti-strength', place: 'example 8.8.16 (p. 348): cylinder of 200/250/300 mm, 30 MPa at the junction', title: 'Allowance on the radius', unit: 'mm', asked: 'press joint: interference that gives the pressure, E 200 GPa',
    entries: [page('junction', 'allowance on the radius', '0.189', () => 30 / oneSteel(200, 250, 300, 1, steelOf(200, 0.3)).contactPressureMpa / 2000)],
  },
  {
    ...common, work: 'bhavikatti-strength', place: 'example 8.8.15 (p. 344): radii 200/250/300 mm, shrunk to 6 MPa, 80 MPa inside', title: 'Hoop stress', unit: 'MPa', asked: 'stack of two rings; the share of the fluid by Lamé as the book adds it',
    entries: [
      page('inner ring', 'bore', '174.67', () => compound()[0]),
      page('inner ring', 'junction', '128.83', () => compound()[1]),
      page('outer ring', 'junction', '189.43', () => compound()[2]),
      page('outer ring', 'outside', '155.27', () => compound()[3]),
    ],
  },
  {
    ...common, work: 'machinerys-handbook', place: '31st ed., shrinkage fits, Table 1 (pp. 643–645)', title: 'Factor C, hub of twice the diameter on a solid steel shaft', unit: '', asked: 'press joint, read back from its pressure', note: 'Poisson ratios of 1/3 and 1/4 follow from the printed values.',
    entries: [page('steel hub', 'C', '0.333', () => shrinkageFactor(30e6, 1 / 3)), page('cast-iron hub', 'C', '0.348', () => shrinkageFactor(15e6, 1 / 4))],
  },
  {
    ...common, work: 'pytel-singer-4', place: 'problem 267: tyre of 12 × 90 mm on a rigid wheel of 2 m, cooled by 55 K', title: 'Pressure and force in the tyre', unit: 'MPa, N', asked: 'press joint, taken back from the thick ring on a stiff core to the thin ring on a rigid wheel that the book assumes (about 1 %)',
    entries: [page('tyre', 'pressure [MPa]', '1.5444', () => tyre().pressureMpa), page('tyre', 'hoop force [N]', '138996', () => tyre().hoopForceN)],
  },
  {
    ...common, work: 'shigley-9', place: 'examples 7-7 and 7-8: (2 in)H7/s6 and 34H11/c11', title: 'Limits of size', unit: 'in, mm', asked: 'zones; the inch tables of the book put 2 in into the range up to 50 mm and print four decimals',
    entries: [
      page('2 in H7', 'largest [in]', '2.0010', () => inch(zone(50, 'H7').upperLimitDeviationUm)),
      page('2 in H7', 'smallest [in]', '2.0000', () => inch(zone(50, 'H7').lowerLimitDeviationUm)),
      page('2 in s6', 'largest [in]', '2.0023', () => inch(zone(50, 's6').upperLimitDeviationUm)),
      page('2 in s6', 'smallest [in]', '2.0017', () => inch(zone(50, 's6').lowerLimitDeviationUm)),
      page('34 H11', 'largest [mm]', '34.160', () => zone(34, 'H11').upperLimitOfSizeMm),
      page('34 H11', 'smallest [mm]', '34.000', () => zone(34, 'H11').lowerLimitOfSizeMm),
      page('34 c11', 'largest [mm]', '33.880', () => zone(34, 'c11').upperLimitOfSizeMm),
      page('34 c11', 'smallest [mm]', '33.720', () => zone(34, 'c11').lowerLimitOfSizeMm),
    ],
  },
];
