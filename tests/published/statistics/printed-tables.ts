/** Abramowitz and Stegun 1964, Table 26.1: P(x), fifteen digits. */
export const normal: readonly (readonly [z: number, printed: string])[] = [[0, '0.500000000000000'], [0.5, '0.691462461274013'], [1, '0.841344746068543'], [1.5, '0.933192798731142'], [2, '0.977249868051821'], [3, '0.998650101968370']];

/** Table 26.5: x for the upper tail Q. */
export const normalTail: readonly (readonly [upperTail: number, printed: string])[] = [[0.1, '1.28155'], [0.05, '1.64485'], [0.025, '1.95996'], [0.01, '2.32635'], [0.005, '2.57583'], [0.001, '3.09023']];

/** Table 26.10: t by degrees of freedom at the two-sided levels. */
export const studentLevels = [0.5, 0.9, 0.95, 0.98, 0.99, 0.999] as const;
export const student: Readonly<Record<number, string>> = {
  1: '1.000 6.314 12.706 31.821 63.657 636.619',
  2: '0.816 2.920 4.303 6.965 9.925 31.599',
  3: '0.765 2.353 3.182 4.541 5.841 12.924',
  4: '0.741 2.132 2.776 3.747 4.604 8.610',
  5: '0.727 2.015 2.571 3.365 4.032 6.869',
  6: '0.718 1.943 2.447 3.143 3.707 5.959',
  7: '0.711 1.895 2.365 2.998 3.499 5.408',
  8: '0.706 1.860 2.306 2.896 3.355 5.041',
  9: '0.703 1.833 2.262 2.821 3.250 4.781',
  10: '0.700 1.812 2.228 2.764 3.169 4.587',
  20: '0.687 1.725 2.086 2.528 2.845 3.850',
  30: '0.683 1.697 2.042 2.457 2.750 3.646',
  60: '0.679 1.671 2.000 2.390 2.660 3.460',
  120: '0.677 1.658 1.980 2.358 2.617 3.373',
};

/** JCGM 100:2008, Table G.2: t by degrees of freedom; 68.27, 95.45 and 99.73 % stand for one, two and three standard deviations. */
export const tableG2Levels = ['68.27', '90', '95', '95.45', '99', '99.73'] as const;
export const tableG2: Readonly<Record<number, string>> = {
  1: '1.84 6.31 12.71 13.97 63.66 235.80',
  2: '1.32 2.92 4.30 4.53 9.92 19.21',
  3: '1.20 2.35 3.18 3.31 5.84 9.22',
  4: '1.14 2.13 2.78 2.87 4.60 6.62',
  5: '1.11 2.02 2.57 2.65 4.03 5.51',
  6: '1.09 1.94 2.45 2.52 3.71 4.90',
  8: '1.07 1.86 2.31 2.37 3.36 4.28',
  10: '1.05 1.81 2.23 2.28 3.17 3.96',
  20: '1.03 1.72 2.09 2.13 2.85 3.42',
  50: '1.01 1.68 2.01 2.05 2.68 3.16',
};

/** Grubbs 1969, Table I: upper 2.5 % points, that is 5 % either side. The same column as ISO 5725-2, 5 %. */
export const grubbs5: Readonly<Record<number, string>> = {
  3: '1.155', 4: '1.481', 5: '1.715', 6: '1.887', 7: '2.020', 8: '2.126', 9: '2.215', 10: '2.290', 11: '2.355',
  12: '2.412', 13: '2.462', 14: '2.507', 15: '2.549', 16: '2.585', 17: '2.620', 18: '2.651', 19: '2.681', 20: '2.709',
};

/** ISO 5725-2, one outlier, 1 % either side. */
export const grubbs1: Readonly<Record<number, string>> = { 3: '1.155', 4: '1.496', 5: '1.764', 6: '1.973', 7: '2.139', 8: '2.274', 9: '2.387', 10: '2.482' };

/** JCGM 100:2008, 4.4.5 Table 1: twenty temperatures [°C], read here as sizes in mm. */
export const twentyReadings = [96.9, 98.18, 98.25, 98.61, 99.03, 99.49, 99.56, 99.74, 99.89, 100.07, 100.33, 100.42, 100.68, 100.95, 101.11, 101.2, 101.57, 101.84, 102.36, 102.72];

/** JCGM 106:2012, Table 1: distance from a limit for a conformance probability. */
export const conformance: readonly (readonly [probability: number, printed: string])[] = [[0.8, '0.84'], [0.9, '1.28'], [0.95, '1.64'], [0.99, '2.33'], [0.999, '3.09']];

/** ISO 14253-1:1998 and 2013, clause 5: U off the zone for conformity, U outside it for nonconformity; limits 49.9 and 50.1 mm, U = 0.02 mm. */
export const decisions: readonly (readonly [measuredMm: number, decision: string])[] = [
  [49.8799, 'does not conform'], [49.88, 'cannot be proven'], [49.9, 'cannot be proven'], [49.9199, 'cannot be proven'], [49.92, 'conforms'], [50, 'conforms'],
  [50.08, 'conforms'], [50.0801, 'cannot be proven'], [50.1, 'cannot be proven'], [50.12, 'cannot be proven'], [50.1201, 'does not conform'],
];
