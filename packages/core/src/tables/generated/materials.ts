// Generated from reference/material/materials.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';
import { among } from '../among.js';
import { runs } from '../runs.js';

/** Elastic, thermal and strength data of metals and plastics (source materials-handbooks; held as: page). */
export const materials: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly id: readonly string[];
    readonly name: readonly string[];
    readonly class: readonly ('steel' | 'stainless' | 'iron' | 'aluminium' | 'magnesium' | 'copper-alloy' | 'titanium' | 'plastic')[];
    readonly condition: readonly string[];
    readonly youngsModulusGpa: readonly number[];
    readonly youngsModulusMinGpa: readonly (number | null)[];
    readonly youngsModulusMaxGpa: readonly (number | null)[];
    readonly poissonRatio: readonly number[];
    readonly expansionUmPerMK: readonly number[];
    readonly expansionMinUmPerMK: readonly (number | null)[];
    readonly expansionMaxUmPerMK: readonly (number | null)[];
    readonly yieldMpa: readonly (number | null)[];
    readonly yieldMinMpa: readonly (number | null)[];
    readonly yieldMaxMpa: readonly (number | null)[];
    readonly yieldCondition: readonly string[];
    readonly tensileMpa: readonly (number | null)[];
    readonly densityKgPerM3: readonly number[];
    readonly maxServiceC: readonly (number | null)[];
    readonly rowSource: readonly string[];
  };
  readonly marks: {
    readonly youngsModulusGpa?: readonly Held[];
    readonly youngsModulusMinGpa?: readonly Held[];
    readonly youngsModulusMaxGpa?: readonly Held[];
    readonly poissonRatio?: readonly Held[];
    readonly expansionUmPerMK?: readonly Held[];
    readonly expansionMinUmPerMK?: readonly Held[];
    readonly expansionMaxUmPerMK?: readonly Held[];
    readonly yieldMpa?: readonly Held[];
    readonly yieldMinMpa?: readonly Held[];
    readonly yieldMaxMpa?: readonly Held[];
    readonly densityKgPerM3?: readonly Held[];
    readonly maxServiceC?: readonly Held[];
  };
} = {
  id: 'materials',
  source: 'materials-handbooks',
  clause: 'property tables',
  held: 'page',
  rowCount: 27,
  columns: {
    id: ['steel-c45', 'steel-c20', 'steel-100cr6', 'ss304', 'ss440c', 'gjl250', 'gjs500', 'al-a380', 'al-alsi9cu3', 'al-6061-t6', 'al-7075-t6', 'al-a356-t6', 'mg-az91d', 'bronze-c932', 'bronze-c861', 'brass-cuzn30', 'brass-cuzn39pb3', 'ti-6al4v', 'cu-etp', 'pvc-u', 'pe-hd', 'pp', 'abs', 'pa6', 'pom-c', 'peek', 'ptfe'],
    name: ['Carbon steel C45 / 1040', 'Carbon steel C22 / 1020', 'Bearing steel 100Cr6 / 52100', 'Stainless steel 304', 'Stainless steel 440C', 'Grey cast iron GJL-250 / G3000', 'Ductile iron GJS-500 / 80-55-06', 'Aluminium die casting A380', 'Aluminium AlSi9Cu3(Fe) EN AC-46000', 'Aluminium 6061-T6', 'Aluminium 7075-T6', 'Aluminium A356-T6', 'Magnesium AZ91D', 'Bearing bronze C93200', 'Manganese bronze C86100', 'Brass CuZn30 C26000', 'Free-cutting brass C36000 / CuZn39Pb3', 'Titanium Ti-6Al-4V', 'Copper C11000', 'PVC-U rigid', 'PE-HD', 'PP homopolymer', 'ABS', 'PA6 cast', 'POM copolymer', 'PEEK unfilled', 'PTFE'],
    class: among(['steel', 'stainless', 'iron', 'aluminium', 'magnesium', 'copper-alloy', 'titanium', 'plastic'], 'aaabbccdddddeffffgfhhhhhhhh'),
    condition: ['hot rolled', 'hot rolled', 'through hardened 60-67 HRC', 'annealed', 'annealed row; hardened in service', 'as cast', 'as cast', 'as cast', 'as die cast', 'T6', 'T6', 'T6 cast', 'die cast', 'sand cast', 'cast', 'cold worked', 'half hard', 'annealed', 'cold worked H04', 'extruded', '', '', 'extrusion / medium impact', 'dry', '', '', ''],
    youngsModulusGpa: [207, 207, 203, 193, 200, 102, 168, 71, 71, 69, 71, 72.4, 45, 100, 103, 101, 97, 114, 115, 3, 1.08, 1.35, 2.4, 2.62, 3, 3.7, 0.5],
    youngsModulusMinGpa: [null, null, 203, null, null, 90, 164, null, 70, 68.9, 71, null, null, null, 103, 100, 97, 114, 115, 2.41, null, 1.14, null, 2.4, 2.9, 3.5, 0.4],
    youngsModulusMaxGpa: [null, null, 210, null, null, 113, 169, null, 75, 69, 71.7, null, null, null, 105, 110, 100, 120, 130, 4.14, null, 1.55, null, 3, 3, 3.9, 0.55],
    poissonRatio: [0.29, 0.29, 0.3, 0.27, 0.28, 0.26, 0.28, 0.33, 0.33, 0.33, 0.33, 0.33, 0.35, 0.34, 0.34, 0.35, 0.34, 0.33, 0.343, 0.38, 0.42, 0.42, 0.35, 0.41, 0.35, 0.4, 0.46],
    expansionUmPerMK: [11.3, 11.7, 12.5, 17.2, 10.2, 11.4, 10.6, 21.8, 21, 23.6, 23.4, 21.5, 26, 18, 17, 19.9, 20.5, 8.6, 17, 70, 130, 150, 74, 81, 85, 47, 135],
    expansionMinUmPerMK: [null, null, 11.9, null, 10, null, 10.6, null, 21, 23.6, null, null, null, null, null, null, null, 8.6, null, 53, 106, 146, 74, 80, null, 47, 126],
    expansionMaxUmPerMK: [null, null, 12.5, null, 10.2, null, 11.2, null, 22, 24, null, null, null, null, null, null, null, 9.5, null, 180, 198, 180, 95, 144, null, 85, 216],
    yieldMpa: [290, 210, 2034, 207, 450, null, 379, 160, 140, 276, 505, 164, 160, 125, 345, 435, 310, 830, 310, 43, 28, 34, 41, 75, 65, 100, 14],
    yieldMinMpa: [290, 210, null, null, 450, null, null, 159, null, 255, null, 164, 97, null, 331, 75, 125, 830, 69, 40.7, 26, 31, null, 45, null, 70, 13.8],
    yieldMaxMpa: [490, 350, null, null, 1900, null, null, 160, null, 276, null, 207, 160, null, 345, 435, 310, 1103, 310, 44.8, 33, 37.2, null, 85, null, 105, 15.2],
    yieldCondition: ['0.2 % proof, hot rolled minimum', 'hot rolled minimum', 'compressive design use; from hardened ball data', 'annealed', 'annealed', 'brittle; use tensile strength', 'as cast minimum', 'as die cast', 'EN 1706 minimum', 'T6', 'T6', 'sand cast 356.0-T6', 'die cast', 'sand cast', 'cast', 'H04', 'half hard', 'annealed minimum', 'H04', 'tensile yield', 'tensile yield', 'tensile yield', 'tensile yield', 'tensile yield dry', 'tensile strength', 'tensile', 'tensile yield'],
    tensileMpa: runs([[null, 5], 207, [null, 21]]),
    densityKgPerM3: [7850, 7850, 7830, 8000, 7700, 7190, 7240, 2710, 2750, 2710, 2780, 2690, 1810, 8930, 8830, 8500, 8500, 4430, 8890, 1390, 959, 905, 1050, 1160, 1410, 1310, 2170],
    maxServiceC: [null, null, 120, 870, 390, null, null, null, null, 150, 120, 150, 120, 230, null, null, null, 400, null, 60, 80, 100, 93, 99, 93, 250, 260],
    rowSource: among(['materials-handbooks', 'general-memory', 'callister-app-b'], 'aaaaaaaabaaaaaaaaaaaacaaaaa'),
  },
  marks: {
    youngsModulusGpa: among(['page', 'computed', 'memory'], 'aaaaabaacaaaacaacaacabaaaca'),
    youngsModulusMinGpa: among(['page', 'memory'], 'aaaaaaaabaaaaaaabaaaaaaaaaa'),
    youngsModulusMaxGpa: among(['page', 'memory'], 'aaaaaaaabaaaaaaabaaaaaaaaaa'),
    poissonRatio: among(['page', 'memory'], 'aabaabbabaababaabaaaabaabba'),
    expansionUmPerMK: among(['page', 'memory'], 'aaaaaaaabaaaaaaaaaabbbaaabb'),
    expansionMinUmPerMK: among(['page', 'memory'], 'aaaaaaaabaaaaaaaaaaaaaaaaba'),
    expansionMaxUmPerMK: runs([['page', 8], 'memory', ['page', 18]]),
    yieldMpa: among(['page', 'memory'], 'aaaaaaaabaaaaaabbaaabaabaaa'),
    yieldMinMpa: among(['page', 'memory'], 'aaaaaaaaaaaaaaabbaaabaabaaa'),
    yieldMaxMpa: among(['page', 'memory'], 'aaaabaaaaaaaaaabbaaabaabaaa'),
    densityKgPerM3: among(['page', 'computed', 'memory'], 'aaaaaabacaacacaacacacaaaaca'),
    maxServiceC: among(['page', 'memory'], 'aaabaaaaabbbbbaaababbbaaabb'),
  },
};
