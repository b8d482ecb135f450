import { expect, test } from 'vitest';
import type { WorkingStep } from '../result/index.js';
import { fit } from './fit.js';
import { identifyClass } from './identify-class.js';
import { toleranceZone } from './tolerance-zone.js';

/** A step in one line: what, how much, from where, how held. */
const line = (step: WorkingStep): string => {
  const from = step.kind === 'lookup' ? `${step.table.replace('iso-286-1-', '')} ${step.row} ${step.column}` : step.kind === 'formula' ? `${step.formula} ${JSON.stringify(step.scope)}` : step.why;
  return `${step.symbol} = ${step.value} ${step.unit}: ${from} (${step.source.held})`;
};

const zone = (nominalMm: number, toleranceClass: string) => toleranceZone.explain({ nominalMm, toleranceClass }, toleranceZone.compute({ nominalMm, toleranceClass }));

test.each([
  [25, 'p6', [
    'kind = shaft : p is small: a shaft (page)',
    'IT = 13 µm: standard-tolerances over 18, up to and including 30 mm it6Um (page)',
    'ei = 22 µm: shaft-deviations over 24, up to and including 30 mm eiPUm (page)',
    'es = 35 µm: ei + IT {"ei":22,"IT":13} (page)',
    'D_max = 25.035 mm: D + es / 1000 {"D":25,"es":35} (computed)',
    'D_min = 25.022 mm: D + ei / 1000 {"D":25,"ei":22} (computed)',
  ]],
  [25, 'f7', [
    'kind = shaft : f is small: a shaft (page)',
    'IT = 21 µm: standard-tolerances over 18, up to and including 30 mm it7Um (page)',
    'es = -20 µm: shaft-deviations over 24, up to and including 30 mm esFUm (page)',
    'ei = -41 µm: es - IT {"es":-20,"IT":21} (page)',
    'D_max = 24.98 mm: D + es / 1000 {"D":25,"es":-20} (computed)',
    'D_min = 24.959 mm: D + ei / 1000 {"D":25,"ei":-41} (computed)',
  ]],
  [25, 'H7', [
    'kind = hole : H is a capital: a hole (page)',
    'IT = 21 µm: standard-tolerances over 18, up to and including 30 mm it7Um (page)',
    'EI = 0 µm: hole-deviations over 24, up to and including 30 mm eiHUm (page)',
    'ES = 21 µm: EI + IT {"EI":0,"IT":21} (page)',
    'D_max = 25.021 mm: D + ES / 1000 {"D":25,"ES":21} (computed)',
    'D_min = 25 mm: D + EI / 1000 {"D":25,"EI":0} (computed)',
  ]],
  [25, 'K7', [
    'kind = hole : K is a capital: a hole (page)',
    'IT = 21 µm: standard-tolerances over 18, up to and including 30 mm it7Um (page)',
    'ES_base = -2 µm: hole-deviations over 24, up to and including 30 mm esKUpToIt8Um (page)',
    'Delta = 8 µm: hole-deviations over 24, up to and including 30 mm deltaIt7Um (computed)',
    'ES = 6 µm: ES_base + Delta {"ES_base":-2,"Delta":8} (page)',
    'EI = -15 µm: ES - IT {"ES":6,"IT":21} (page)',
    'D_max = 25.006 mm: D + ES / 1000 {"D":25,"ES":6} (computed)',
    'D_min = 24.985 mm: D + EI / 1000 {"D":25,"EI":-15} (computed)',
  ]],
  [280, 'M6', [
    'kind = hole : M is a capital: a hole (page)',
    'IT = 32 µm: standard-tolerances over 250, up to and including 315 mm it6Um (page)',
    'ES_base = -20 µm: hole-deviations over 250, up to and including 280 mm esMUpToIt8Um (page)',
    'Delta = 9 µm: hole-deviations over 250, up to and including 280 mm deltaIt6Um (computed)',
    'ES_rule = -11 µm: ES_base + Delta {"ES_base":-20,"Delta":9} (page)',
    'ES = -9 µm: the standard prints its own value for M6 over 250, up to and including 315 mm (memory)',
    'EI = -41 µm: ES - IT {"ES":-9,"IT":32} (page)',
    'D_max = 279.991 mm: D + ES / 1000 {"D":280,"ES":-9} (computed)',
    'D_min = 279.959 mm: D + EI / 1000 {"D":280,"EI":-41} (computed)',
  ]],
  [25, 'JS7', [
    'kind = hole : JS is a capital: a hole (page)',
    'IT = 21 µm: standard-tolerances over 18, up to and including 30 mm it7Um (page)',
    'position = even : JS lies half the tolerance to either side; older editions let the half be rounded down to a whole µm, here it is exact (page)',
    'ES = 10.5 µm: IT / 2 {"IT":21} (page)',
    'EI = -10.5 µm: -IT / 2 {"IT":21} (page)',
    'D_max = 25.0105 mm: D + ES / 1000 {"D":25,"ES":10.5} (computed)',
    'D_min = 24.9895 mm: D + EI / 1000 {"D":25,"EI":-10.5} (computed)',
  ]],
  [25, 'K2', [
    'kind = hole : K is a capital: a hole (page)',
    'IT = 2.5 µm: standard-tolerances over 18, up to and including 30 mm it2Um (page)',
    'ES = -2 µm: hole-deviations over 24, up to and including 30 mm esKUpToIt8Um (page)',
    'EI = -4.5 µm: ES - IT {"ES":-2,"IT":2.5} (page)',
    'Delta = 0 µm: increments are given from grade 3; finer grades are taken without one (memory)',
    'D_max = 24.998 mm: D + ES / 1000 {"D":25,"ES":-2} (computed)',
    'D_min = 24.9955 mm: D + EI / 1000 {"D":25,"EI":-4.5} (computed)',
  ]],
] as const)('working of %d %s', (nominalMm, toleranceClass, lines) => {
  expect(zone(nominalMm, toleranceClass).map(line)).toEqual(lines);
});

test('a size finer than a millionth is settled first, and only then', () => {
  expect(zone(25.0000004, 'h6').map(line)[0]).toBe('D = 25 mm: round(D_given * 1000000) / 1000000 {"D_given":25.0000004} (computed)');
  expect(zone(25.000001, 'h6')[0]?.symbol).toBe('kind');
});

test('that older editions rounded a half down is said of JS and js in grades 7 to 11 with an odd tolerance', () => {
  const isTold = (nominalMm: number, toleranceClass: string) => zone(nominalMm, toleranceClass).some((step) => step.kind === 'choice' && step.why.includes('older editions'));
  // IT6 13, IT7 21, IT8 33, IT9 52, IT11 130 over 18 up to 30 mm; IT9 25 and IT11 60 up to 3 mm; IT11 75 over 3 up to 6 mm; IT5 9.
  expect([[25, 'js6'], [25, 'js7'], [25, 'js8'], [25, 'js9'], [2, 'js9'], [2, 'js11'], [5, 'js11'], [25, 'js5'], [5, 'js12']].map(([size, name]) => isTold(size as number, name as string))).toEqual([false, true, true, false, true, false, true, false, false]);
});

test('holes K to ZC finer than grade 3 are taken without an increment, and that is assumed; nothing else is', () => {
  const assumed = (nominalMm: number, toleranceClass: string) => toleranceZone.run({ nominalMm, toleranceClass }).assumptions.map(({ name }) => name);
  expect(assumed(25, 'K2')).toEqual(['deltaUm']);
  expect(assumed(25, 'P1')).toEqual(['deltaUm']);
  for (const [size, name] of [[25, 'K3'], [25, 'k2'], [25, 'H2'], [2, 'K2'], [25, 'JS2'], [560, 'P2']] as const) expect(assumed(size, name), name).toEqual([]);
});

test('working of a fit ends with its four limits, their sum and the kind', () => {
  const input = { nominalMm: 25, hole: 'H7', shaft: 'p6' };
  expect(fit.explain(input, fit.compute(input)).slice(-6).map(line)).toEqual([
    'c_max = 0 µm: max(0, ES - ei) {"ES":21,"ei":22} (page)',
    'c_min = 0 µm: max(0, EI - es) {"EI":0,"es":35} (page)',
    'i_max = 35 µm: max(0, es - EI) {"es":35,"EI":0} (page)',
    'i_min = 1 µm: max(0, ei - ES) {"ei":22,"ES":21} (page)',
    'T_fit = 34 µm: ES - EI + es - ei {"ES":21,"EI":0,"es":35,"ei":22} (page)',
    'kind = interference : the largest hole is no larger than the smallest shaft (page)',
  ]);
});

test('working of the reverse question: the range, the nearest class, how far both limits are', () => {
  const working = (input: Parameters<typeof identifyClass.compute>[0]) => identifyClass.explain(input, identifyClass.compute(input)).map(line);
  expect(working({ nominalMm: 25, kind: 'shaft', upperLimitDeviationUm: 35, lowerLimitDeviationUm: 22 })).toEqual([
    'class = p6 : its limits equal the given ones (page)',
    'preference = first : the selection names it as first choice (memory)',
    'm_upper = 0 µm: Z_upper - U {"Z_upper":35,"U":35} (computed)',
    'm_lower = 0 µm: L - Z_lower {"L":22,"Z_lower":22} (computed)',
    'd = 0 µm: abs(m_upper) + abs(m_lower) {"m_upper":0,"m_lower":0} (computed)',
  ]);
  expect(working({ nominalMm: 25, kind: 'hole', largestMm: 25.3, smallestMm: 25.001 })).toEqual([
    'U = 300 µm: round((D_largest - D) * 1000000) / 1000 {"D_largest":25.3,"D":25} (computed)',
    'L = 1 µm: round((D_smallest - D) * 1000000) / 1000 {"D_smallest":25.001,"D":25} (computed)',
    'class = H13 : of all classes for this size its limits are the least away, both taken together (page)',
    'preference = none : the selection does not name it (memory)',
    'm_upper = 30 µm: Z_upper - U {"Z_upper":330,"U":300} (computed)',
    'm_lower = 1 µm: L - Z_lower {"L":1,"Z_lower":0} (computed)',
    'd = 31 µm: abs(m_upper) + abs(m_lower) {"m_upper":30,"m_lower":1} (computed)',
  ]);
});
