import { expect, test } from 'vitest';
import { instruments } from '../../packages/core/src/tables/generated/instruments.js';
import { iso2861StandardTolerances } from '../../packages/core/src/tables/generated/iso-286-1-standard-tolerances.js';
import { materials } from '../../packages/core/src/tables/generated/materials.js';
import { metricThreads } from '../../packages/core/src/tables/generated/metric-threads.js';
import { sheetMetalPilotHoles } from '../../packages/core/src/tables/generated/sheet-metal-pilot-holes.js';
import { sheetMetalScrewThreads } from '../../packages/core/src/tables/generated/sheet-metal-screw-threads.js';
import { sockets } from '../../packages/core/src/tables/generated/sockets.js';
import { squares } from '../../packages/core/src/tables/generated/squares.js';
import { tubes } from '../../packages/core/src/tables/generated/tubes.js';
import { twistDrills } from '../../packages/core/src/tables/generated/twist-drills.js';
import { expectOnlyListed, rangeText, type Difference } from './internal/kept-as-printed.js';
import { numberAt, rowsOf, type Row } from './internal/table-rows.js';

const tubeText = (row: Row): string => [row['standard'], row['series'], row['designation'], row['wallMm']].join(' ');

test('the least bore of a tube is its least outside less two of its thickest wall, as printed to 0.1 mm', () => {
  const differences: Difference[] = [];
  for (const row of rowsOf(tubes)) {
    if (row['insideMinMm'] === null || row['wallMaxMm'] === null) continue;
    const byRule = Number(((row['outsideMinMm'] === null ? numberAt(row, 'outsideMm') : numberAt(row, 'outsideMinMm')) - 2 * numberAt(row, 'wallMaxMm')).toFixed(2));
    if (Math.abs(numberAt(row, 'insideMinMm') - byRule) > 0.1) differences.push({ table: tubes.id, row: tubeText(row), column: 'insideMinMm', printed: row['insideMinMm'] ?? null, byRule });
  }
  expectOnlyListed('tube-bore', differences);
});

test('a tube has a bore: its wall lies between nothing and half its outside, and limits enclose the nominal', () => {
  for (const row of rowsOf(tubes)) {
    const outside = numberAt(row, 'outsideMm');
    if (row['wallMm'] !== null) expect(numberAt(row, 'wallMm')).toBeLessThan(outside / 2);
    if (row['wallMaxMm'] !== null && row['wallMm'] !== null) expect(numberAt(row, 'wallMaxMm')).toBeGreaterThanOrEqual(numberAt(row, 'wallMm'));
    if (row['outsideMinMm'] !== null && row['outsideMaxMm'] !== null) {
      expect(numberAt(row, 'outsideMinMm')).toBeLessThanOrEqual(outside + 1e-9);
      expect(numberAt(row, 'outsideMaxMm')).toBeGreaterThanOrEqual(outside - 1e-9);
    }
  }
});

test('one pipe size has one outside in every standard that uses it', () => {
  const differences: Difference[] = [];
  const inPipeSizes = rowsOf(tubes).filter((row) => String(row['designation']).startsWith('NPS '));
  for (const row of inPipeSizes) {
    const first = inPipeSizes.find((candidate) => candidate['designation'] === row['designation']) ?? {};
    if (Math.abs(numberAt(row, 'outsideMm') - numberAt(first, 'outsideMm')) > 0.1) differences.push({ table: tubes.id, row: tubeText(row), column: 'outsideMm', printed: row['outsideMm'] ?? null, byRule: first['outsideMm'] ?? null });
  }
  expectOnlyListed('pipe-outside', differences);
});

test('copper tube in inches is an eighth wider than its name', () => {
  const differences: Difference[] = [];
  for (const row of rowsOf(tubes).filter((candidate) => candidate['standard'] === 'ASTM B88')) {
    const words = /(?:(\d+)-)?(\d+)(?:\/(\d+))?\s*(?:in)?$/.exec(String(row['designation']));
    const inches = Number(words?.[1] ?? 0) + Number(words?.[2]) / Number(words?.[3] ?? 1);
    const byRule = Number(((inches + 0.125) * 25.4).toFixed(3));
    if (!(Math.abs(numberAt(row, 'outsideMm') - byRule) <= 0.006)) differences.push({ table: tubes.id, row: tubeText(row), column: 'outsideMm', printed: row['outsideMm'] ?? null, byRule });
  }
  expectOnlyListed('copper-eighth', differences);
});

test('a wall named by a dimension ratio is the outside divided by it', () => {
  const differences: Difference[] = [];
  for (const row of rowsOf(tubes)) {
    const ratio = Number(/^SDR (\d+(?:\.\d+)?)$/.exec(String(row['series']))?.[1]);
    if (Number.isNaN(ratio) || row['wallMm'] === null) continue;
    const byRule = Number((numberAt(row, 'outsideMm') / ratio).toFixed(2));
    // No wall is made thinner than 1.5 mm, and printed walls are rounded up to a tenth or to 0.02 mm.
    if (numberAt(row, 'wallMm') < byRule - 0.06 || numberAt(row, 'wallMm') > Math.max(1.57, byRule + 0.2)) differences.push({ table: tubes.id, row: tubeText(row), column: 'wallMm', printed: row['wallMm'] ?? null, byRule });
  }
  expectOnlyListed('dimension-ratio', differences);
});

test('a socket grows with its hexagon by 1.25, from 2 mm (to 6) or 2.25 mm (from 7) of wall', () => {
  const differences: Difference[] = [];
  for (const row of rowsOf(sockets)) {
    const hex = numberAt(row, 'hexMm');
    const text = `${String(row['drive'])} in, ${hex} mm`;
    const corners = Number(((2 / Math.sqrt(3)) * hex).toFixed(2));
    if (Math.abs(numberAt(row, 'acrossCornersMm') - corners) > 0.011) differences.push({ table: sockets.id, row: text, column: 'acrossCornersMm', printed: row['acrossCornersMm'] ?? null, byRule: corners });
    if (numberAt(row, 'outsideNutEndMaxMm') <= numberAt(row, 'acrossCornersMm')) differences.push({ table: sockets.id, row: text, column: 'outsideNutEndMaxMm', printed: row['outsideNutEndMaxMm'] ?? null, byRule: corners });
    if (row['drive'] !== '1/4') continue;
    const byRule = Number((1.25 * hex + (hex <= 6 ? 2 : 2.25)).toFixed(1));
    if (Math.abs(numberAt(row, 'outsideNutEndMaxMm') - byRule) > 0.11) differences.push({ table: sockets.id, row: text, column: 'outsideNutEndMaxMm', printed: row['outsideNutEndMaxMm'] ?? null, byRule });
  }
  expectOnlyListed('socket-pattern', differences);
});

test('a twist drill has the tolerance h8 of ISO 286 and a point of 118°', () => {
  const grades = rowsOf(iso2861StandardTolerances);
  for (const row of rowsOf(twistDrills)) {
    const diameter = numberAt(row, 'diameterMm');
    const grade = grades.find((candidate) => diameter > numberAt(candidate, 'overMm') && diameter <= numberAt(candidate, 'upToMm'));
    expect(numberAt(row, 'toleranceMinusMm')).toBe(numberAt(grade ?? {}, 'it8Um') / 1000);
    expect(Math.abs(numberAt(row, 'pointLength118Mm') - diameter / 2 / Math.tan((59 * Math.PI) / 180))).toBeLessThan(0.0051);
  }
});

test('a pilot hole lies between the core and the outside of its screw, and never shrinks as the sheet thickens', () => {
  const threads = rowsOf(sheetMetalScrewThreads);
  const holes = rowsOf(sheetMetalPilotHoles);
  for (const row of holes) {
    const thread = threads.find((candidate) => candidate['designation'] === row['designation']) ?? {};
    expect(numberAt(row, 'pilotMm')).toBeGreaterThanOrEqual(numberAt(thread, 'rootMinMm'));
    expect(numberAt(row, 'pilotMm')).toBeLessThan(numberAt(thread, 'outsideMinMm'));
    const before = holes.find((candidate) => candidate['designation'] === row['designation'] && candidate['set'] === row['set'] && candidate['sheetUpToMm'] === row['sheetOverMm']);
    if (before !== undefined) expect(numberAt(row, 'pilotMm')).toBeGreaterThanOrEqual(numberAt(before, 'pilotMm'));
  }
});

test('screw threads: core inside the least outside, limits in order, pitch near four to five in ten', () => {
  for (const row of rowsOf(sheetMetalScrewThreads)) {
    expect([row['rootMinMm'], row['rootMaxMm'], row['outsideMinMm'], row['outsideMm']].map(Number)).toEqual([row['rootMinMm'], row['rootMaxMm'], row['outsideMinMm'], row['outsideMm']].map(Number).toSorted((a, b) => a - b));
    expect(numberAt(row, 'pitchMm') / numberAt(row, 'outsideMm')).toBeGreaterThan(0.3);
    expect(numberAt(row, 'pitchMm') / numberAt(row, 'outsideMm')).toBeLessThan(0.4);
  }
});

test('squares follow the linear formulas of their grades', () => {
  // Grade 0: 5 + L/50, grade 1: 10 + L/20, grade 2: 20 + L/10, in micrometres with L in mm
  const formulas: Readonly<Record<string, (leg: number) => number>> = { '0': (leg) => 5 + leg / 50, '1': (leg) => 10 + leg / 20, '2': (leg) => 20 + leg / 10 };
  for (const row of rowsOf(squares)) expect(numberAt(row, 'squarenessErrorMm') * 1000).toBeCloseTo(formulas[String(row['grade'])]?.(numberAt(row, 'legMm')) ?? Number.NaN, 9);
});

test('a calliper measures inside and depth with 0.02 mm more of permissible error than outside', () => {
  const rows = rowsOf(instruments).filter((row) => String(row['instrument']).includes('calliper'));
  for (const row of rows.filter((candidate) => candidate['measures'] !== 'outside')) {
    const outside = rows.find((candidate) => candidate['instrument'] === String(row['instrument']).replace(/-(inside|depth)/, '-outside') && candidate['overMm'] === row['overMm']);
    expect(numberAt(row, 'permissibleErrorMm')).toBeCloseTo(numberAt(outside ?? {}, 'permissibleErrorMm') + 0.02, 9);
  }
});

test('a micrometer is permitted 4 µm and a fiftieth of a per mille of its range, rounded down', () => {
  for (const row of rowsOf(instruments).filter((candidate) => candidate['instrument'] === 'outside-micrometer')) {
    expect(numberAt(row, 'permissibleErrorMm') * 1000).toBeCloseTo(4 + Math.floor(numberAt(row, 'overMm') / 50), 9);
  }
});

test('no instrument claims less error over a longer range, and none a step coarser than ten times its error', () => {
  const rows = rowsOf(instruments);
  for (const row of rows) {
    const before = rows.find((candidate) => candidate['instrument'] === row['instrument'] && candidate['upToMm'] === row['overMm']);
    if (before !== undefined) expect(numberAt(row, 'permissibleErrorMm')).toBeGreaterThanOrEqual(numberAt(before, 'permissibleErrorMm'));
    expect(numberAt(row, 'resolutionMm')).toBeLessThanOrEqual(10 * numberAt(row, 'permissibleErrorMm'));
  }
});

test('what is printed as a span of a material encloses its value', () => {
  const differences: Difference[] = [];
  const spans = [
    ['youngsModulusGpa', 'youngsModulusMinGpa', 'youngsModulusMaxGpa'],
    ['expansionUmPerMK', 'expansionMinUmPerMK', 'expansionMaxUmPerMK'],
    ['yieldMpa', 'yieldMinMpa', 'yieldMaxMpa'],
  ] as const;
  for (const row of rowsOf(materials)) {
    for (const [value, low, high] of spans) {
      if (row[value] === null || row[low] === null || row[high] === null) continue;
      if (numberAt(row, value) < numberAt(row, low) || numberAt(row, value) > numberAt(row, high)) differences.push({ table: materials.id, row: String(row['id']), column: value, printed: row[value] ?? null, byRule: rangeText(numberAt(row, low), numberAt(row, high)) });
    }
  }
  expectOnlyListed('span-encloses-value', differences);
});

test('steel stretches by E·α near 2.3 MPa a kelvin, aluminium near 1.6: modulus and expansion of the table belong together', () => {
  for (const row of rowsOf(materials)) {
    const stress = numberAt(row, 'youngsModulusGpa') * numberAt(row, 'expansionUmPerMK') * 1e-3;
    if (row['class'] === 'steel') expect(stress).toBeGreaterThan(2.2);
    if (row['class'] === 'steel') expect(stress).toBeLessThan(2.7);
    if (row['class'] === 'aluminium') expect(stress).toBeGreaterThan(1.4);
    if (row['class'] === 'aluminium') expect(stress).toBeLessThan(1.8);
  }
});

test('a metric thread has the stress area of its basic profile, a nut about 1.5 to 2 times its size over flats and 0.8 to 0.95 high', () => {
  // d2 = d − 0.649519·P, d3 = d − 1.226869·P, As = π/4·((d2 + d3)/2)²
  for (const row of rowsOf(metricThreads)) {
    const [d, P] = [numberAt(row, 'majorMm'), numberAt(row, 'pitchMm')];
    const area = (Math.PI / 4) * ((d - 0.649519 * P + d - 1.226869 * P) / 2) ** 2;
    expect(Math.abs(numberAt(row, 'stressAreaMm2') / area - 1)).toBeLessThan(0.005);
    expect(numberAt(row, 'acrossFlatsMm') / d).toBeGreaterThanOrEqual(1.49);
    expect(numberAt(row, 'acrossFlatsMm') / d).toBeLessThanOrEqual(1.7);
    expect(numberAt(row, 'nutHeightMm') / d).toBeGreaterThan(0.8);
    expect(numberAt(row, 'nutHeightMm') / d).toBeLessThan(0.95);
    expect(numberAt(row, 'washerOutsideMm')).toBeGreaterThan(numberAt(row, 'acrossFlatsMm'));
  }
});
