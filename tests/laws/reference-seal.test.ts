import { expect, test } from 'vitest';
import { boreToleranceRmaInch } from '../../packages/core/src/tables/generated/bore-tolerance-rma-inch.js';
import { din3760Housing } from '../../packages/core/src/tables/generated/din-3760-housing.js';
import { housingChamfer } from '../../packages/core/src/tables/generated/housing-chamfer.js';
import { lipFluid } from '../../packages/core/src/tables/generated/lip-fluid.js';
import { lipInterference } from '../../packages/core/src/tables/generated/lip-interference.js';
import { lipPressure } from '../../packages/core/src/tables/generated/lip-pressure.js';
import { lipSpeed } from '../../packages/core/src/tables/generated/lip-speed.js';
import { lipTemperature } from '../../packages/core/src/tables/generated/lip-temperature.js';
import { pressFitAllowance } from '../../packages/core/src/tables/generated/press-fit-allowance.js';
import { pressFitAllowanceInch } from '../../packages/core/src/tables/generated/press-fit-allowance-inch.js';
import { shaftLeadIn } from '../../packages/core/src/tables/generated/shaft-lead-in.js';
import { shaftToleranceRma } from '../../packages/core/src/tables/generated/shaft-tolerance-rma.js';
import { shaftToleranceRmaInch } from '../../packages/core/src/tables/generated/shaft-tolerance-rma-inch.js';
import { standardSizes } from '../../packages/core/src/tables/generated/standard-sizes.js';
import { surfaceLimits } from '../../packages/core/src/tables/generated/surface-limits.js';
import { widthToleranceRmaInch } from '../../packages/core/src/tables/generated/width-tolerance-rma-inch.js';
import { widthTolerance } from '../../packages/core/src/tables/generated/width-tolerance.js';
import { expectOnlyListed, rangeText, type Difference } from './internal/kept-as-printed.js';
import { numberAt, rowsOf, type Row } from './internal/table-rows.js';

const mmPerInch = 25.4;
const of = (rows: readonly Row[], column: string, value: string) => rows.filter((row) => row[column] === value);
const allowances = rowsOf(pressFitAllowance);

test('a housing of DIN 3760 seats 0.85 of the width and is 0.3 mm deeper than the seal', () => {
  const differences: Difference[] = [];
  for (const row of rowsOf(din3760Housing)) {
    const width = numberAt(row, 'widthMm');
    const rules = { seatLengthMinMm: Number((0.85 * width).toFixed(4)), boreDepthMinMm: Number((width + 0.3).toFixed(4)) };
    for (const [column, byRule] of Object.entries(rules)) if (row[column] !== byRule) differences.push({ table: din3760Housing.id, row: `width ${width}`, column, printed: row[column] ?? null, byRule });
  }
  expectOnlyListed('housing-by-width', differences);
});

test('smooth rubber takes one allowance in ISO 6194-1 and DIN 3760, and the reprints of three sets agree where their ranges meet', () => {
  const differences: Difference[] = [];
  const pairs = [
    ['din-3760', 'iso-6194-1', 'rubber-covered'],
    ['rma-metric', 'iso-6194-1', 'rubber-covered'],
    ['rma-metric', 'iso-6194-1', 'metal-case'],
  ] as const;
  for (const [set, other, construction] of pairs) {
    for (const row of of(of(allowances, 'set', set), 'construction', construction)) {
      const twin = of(of(allowances, 'set', other), 'construction', construction).find((candidate) => candidate['overMm'] === row['overMm']);
      for (const column of ['allowanceMinMm', 'allowanceMaxMm']) {
        if (row[column] !== twin?.[column]) differences.push({ table: pressFitAllowance.id, row: `${set} ${construction} ${rangeText(numberAt(row, 'overMm'), numberAt(row, 'upToMm'))}`, column, printed: row[column] ?? null, byRule: twin?.[column] ?? null });
      }
    }
  }
  expectOnlyListed('sets-agree', differences);
});

test('an allowance is a real span, grows with the bore, and ribs ask no less than a smooth cover', () => {
  for (const row of allowances) {
    expect(numberAt(row, 'allowanceMaxMm')).toBeGreaterThan(numberAt(row, 'allowanceMinMm'));
    const before = allowances.find((candidate) => candidate['set'] === row['set'] && candidate['construction'] === row['construction'] && candidate['upToMm'] === row['overMm']);
    if (before !== undefined) {
      expect(numberAt(row, 'allowanceMinMm')).toBeGreaterThanOrEqual(numberAt(before, 'allowanceMinMm'));
      expect(numberAt(row, 'allowanceMaxMm')).toBeGreaterThanOrEqual(numberAt(before, 'allowanceMaxMm'));
    }
    if (row['construction'] !== 'rubber-covered-ribbed') continue;
    const smooth = allowances.find((candidate) => candidate['set'] === row['set'] && candidate['construction'] === 'rubber-covered' && candidate['overMm'] === row['overMm']);
    expect(numberAt(row, 'allowanceMinMm')).toBeGreaterThanOrEqual(numberAt(smooth ?? {}, 'allowanceMinMm'));
    expect(numberAt(row, 'allowanceMaxMm')).toBeGreaterThanOrEqual(numberAt(smooth ?? {}, 'allowanceMaxMm'));
  }
});

test('an inch allowance of smooth rubber stands evenly about whole thousandths', () => {
  for (const row of rowsOf(pressFitAllowanceInch)) {
    expect(numberAt(row, 'allowanceMaxIn')).toBeGreaterThan(numberAt(row, 'allowanceMinIn'));
    if (row['construction'] !== 'rubber-covered') continue;
    const middleThou = (numberAt(row, 'allowanceMinIn') + numberAt(row, 'allowanceMaxIn')) * 500;
    expect(middleThou).toBeCloseTo(Math.round(middleThou), 9);
  }
});

test('the shaft tolerances of the inch and the metric list say the same within 0.006 mm', () => {
  const metric = rowsOf(shaftToleranceRma);
  const inch = rowsOf(shaftToleranceRmaInch);
  expect(inch).toHaveLength(metric.length);
  inch.forEach((row, i) => expect(Math.abs(numberAt(row, 'toleranceIn') * mmPerInch - numberAt(metric[i] ?? {}, 'toleranceUm') / 1000)).toBeLessThan(0.006));
});

test('the inch bore tolerance never narrows with size and never opens more than it closes', () => {
  const rows = rowsOf(boreToleranceRmaInch);
  rows.forEach((row, i) => {
    const before = rows[i - 1];
    if (before !== undefined) expect(numberAt(row, 'upperIn') - numberAt(row, 'lowerIn')).toBeGreaterThanOrEqual(numberAt(before, 'upperIn') - numberAt(before, 'lowerIn'));
    expect(numberAt(row, 'upperIn')).toBeLessThanOrEqual(-numberAt(row, 'lowerIn'));
  });
});

test('pressure rows in bar and m/s are the psi and ft/min of the same list, within 0.001 MPa', () => {
  // 7, 5 and 3 psi at 1 000 and 2 000 ft/min and over; 1 psi = 6.894757 kPa, 1 ft/min = 0.00508 m/s
  const rows = of(rowsOf(lipPressure), 'set', 'rma');
  rows.forEach((row, i) => expect(Math.abs(numberAt(row, 'pressureMaxMpa') - ([7, 5, 3][i] ?? 0) * 0.006894757)).toBeLessThan(0.001));
  expect(rows).toHaveLength(3);
  expect(rows.slice(0, 2).map((row) => row['speedUpToMps'])).toEqual([1000, 2000].map((feet) => Number((feet * 0.00508).toFixed(1))));
});

test('a set allows no more pressure at a higher speed', () => {
  const rows = rowsOf(lipPressure).filter((row) => row['speedUpToMps'] !== null);
  for (const row of rows) {
    const before = rows.find((candidate) => candidate['set'] === row['set'] && candidate['speedUpToMps'] === row['speedOverMps']);
    if (before !== undefined) expect(numberAt(row, 'pressureMaxMpa')).toBeLessThanOrEqual(numberAt(before, 'pressureMaxMpa'));
  }
});

test('surface limits in micrometres are the microinches of the same list, to two digits', () => {
  const differences: Difference[] = [];
  // Shaft 8 to 17, metal case 100, rubber 150 microinches; 1 microinch = 0.0254 µm
  const rules = [
    ['shaft-ra', null, 'lowerUm', 8],
    ['shaft-ra', null, 'upperUm', 17],
    ['bore-ra', 'metal-case', 'upperUm', 100],
    ['bore-ra', 'rubber-covered', 'upperUm', 150],
  ] as const;
  for (const [what, construction, column, microinch] of rules) {
    const row = of(rowsOf(surfaceLimits), 'set', 'rma').find((candidate) => candidate['what'] === what && (candidate['construction'] || null) === construction) ?? {};
    const byRule = Number((microinch * 0.0254).toPrecision(2));
    if (row[column] !== byRule) differences.push({ table: surfaceLimits.id, row: `rma ${what} ${construction ?? 'any'}`, column, printed: row[column] ?? null, byRule });
  }
  expectOnlyListed('microinch', differences);
});

test('rubber works inside its own limits', () => {
  const differences: Difference[] = [];
  const rows = rowsOf(lipTemperature);
  for (const row of of(rows, 'kind', 'working')) {
    const limit = of(rows, 'kind', 'rubber-limit').find((candidate) => candidate['material'] === row['material']);
    if (limit?.['maxC'] == null) continue;
    if (numberAt(row, 'maxC') > numberAt(limit, 'maxC')) differences.push({ table: lipTemperature.id, row: `${String(row['material'])} working`, column: 'maxC', printed: row['maxC'] ?? null, byRule: limit['maxC'] });
  }
  expectOnlyListed('working-inside-limit', differences);
});

test('two sources for one rubber in one fluid are never at odds by more than a step', () => {
  const differences: Difference[] = [];
  const steps = ['good', 'limited', 'poor'];
  for (const row of rowsOf(lipFluid)) {
    const others = rowsOf(lipFluid).filter((candidate) => candidate['material'] === row['material'] && candidate['fluid'] === row['fluid']);
    const far = others.find((candidate) => Math.abs(steps.indexOf(String(candidate['rating'])) - steps.indexOf(String(row['rating']))) > 1);
    if (far !== undefined) differences.push({ table: lipFluid.id, row: `${String(row['material'])} ${String(row['fluid'])}`, column: 'rating', printed: row['rating'] ?? null, byRule: far['rating'] ?? null });
  }
  expectOnlyListed('fluids-agree', differences);
});

test('standard sizes: each once, in order, from shaft 6 to 480 and housing 16 to 530, with room for a lip', () => {
  const rows = rowsOf(standardSizes);
  const sizes = rows.map((row) => [numberAt(row, 'shaftMm'), numberAt(row, 'outsideMm'), numberAt(row, 'widthMm')] as const);
  expect(new Set(rows.map((row) => Object.values(row).join(' '))).size).toBe(sizes.length);
  for (const list of new Set(rows.map((row) => row['list']))) {
    const inList = sizes.filter((_, i) => rows[i]?.['list'] === list);
    expect(inList).toEqual(inList.toSorted((a, b) => a[0] - b[0] || a[1] - b[1] || a[2] - b[2]));
  }
  expect([Math.min(...sizes.map((size) => size[0])), Math.max(...sizes.map((size) => size[0])), Math.min(...sizes.map((size) => size[1])), Math.max(...sizes.map((size) => size[1]))]).toEqual([6, 480, 16, 530]);
  for (const [shaft, outside, width] of sizes) {
    expect(outside - shaft).toBeGreaterThanOrEqual(10);
    expect([7, 8, 10, 12, 15, 20, 25]).toContain(width);
  }
});

test('lead-in, chamfer and width tolerance grow with size', () => {
  const grow = (rows: readonly Row[], column: string, over: string, upTo: string, group?: string) => {
    for (const row of rows) {
      const before = rows.find((candidate) => candidate[upTo] === row[over] && (group === undefined || candidate[group] === row[group]));
      if (before?.[column] != null) expect(numberAt(row, column)).toBeGreaterThan(numberAt(before, column));
    }
  };
  grow(rowsOf(shaftLeadIn), 'diameterReductionMm', 'overMm', 'upToMm');
  grow(rowsOf(housingChamfer), 'extraDepthMm', 'overMm', 'upToMm', 'set');
  grow(rowsOf(housingChamfer), 'chamferLengthMinMm', 'overMm', 'upToMm', 'set');
  grow(rowsOf(widthTolerance), 'toleranceMm', 'overMm', 'upToMm', 'set');
});

test('lip interference spans without a gap and grows with the shaft', () => {
  const rows = rowsOf(lipInterference);
  rows.forEach((row, i) => {
    expect(numberAt(row, 'lipInterferenceMaxMm')).toBeGreaterThan(numberAt(row, 'lipInterferenceMinMm'));
    const before = rows[i - 1];
    if (before === undefined) return;
    expect(row['overMm']).toBe(before['upToMm']);
    expect(numberAt(row, 'lipInterferenceMinMm')).toBeGreaterThan(numberAt(before, 'lipInterferenceMinMm'));
    expect(numberAt(row, 'lipInterferenceMaxMm')).toBeGreaterThan(numberAt(before, 'lipInterferenceMaxMm'));
  });
});

test('the limit in rpm to 35 mm meets the general limit in m/s there within 3 %', () => {
  const rows = rowsOf(lipSpeed);
  const rpm = rows.find((row) => row['speedMaxRpm'] !== null) ?? {};
  const general = rows.find((row) => row['material'] === 'any' && row['speedMaxMps'] !== null) ?? {};
  const metresPerSecond = (Math.PI * numberAt(rpm, 'shaftUpToMm') * numberAt(rpm, 'speedMaxRpm')) / 60_000;
  expect(Math.abs(metresPerSecond / numberAt(general, 'speedMaxMps') - 1)).toBeLessThan(0.03);
});

test('the inch tolerance of the width is that of the wide metric seal within 0.02 mm', () => {
  const [inch] = rowsOf(widthToleranceRmaInch);
  const wide = rowsOf(widthTolerance).find((row) => row['set'] === 'iso-6194-1' && row['overMm'] === 10);
  expect(Math.abs(numberAt(inch ?? {}, 'toleranceIn') * mmPerInch - numberAt(wide ?? {}, 'toleranceMm'))).toBeLessThan(0.02);
});
