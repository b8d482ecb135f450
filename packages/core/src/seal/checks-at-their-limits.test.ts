import { describe, expect, test } from 'vitest';
import { sealCheck, type SealCheckOutput } from './seal-check.js';
import type { Situation } from './situation-field.js';

/** Each check at its published limit and just beside it. An instrument almost without error, and one of ±0.02 mm (U = 2·0.017 32/√3). */
const instruments: Situation['instruments'] = (['outside', 'inside'] as const).flatMap((measures) => [
  { id: `fine-${measures}`, measures, resolutionMm: 1e-6, permissibleErrorMm: 1e-6 },
  { id: `coarse-${measures}`, measures, resolutionMm: 1e-6, permissibleErrorMm: 0.0173205 },
]);
const seal: Situation['seal'] = { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' };
const shaftOf = (valueMm: number, how = 'fine') => ({ readings: [{ instrument: `${how}-outside`, valuesMm: [valueMm] }] });
const boreOf = (valueMm: number, how = 'fine') => ({ readings: [{ instrument: `${how}-inside`, valuesMm: [valueMm] }] });

function look(more: Partial<Situation>): SealCheckOutput {
  return sealCheck.compute({ seal, instruments, ...more });
}
function told(more: Partial<Situation>, start: RegExp): string {
  return look(more).findings.filter(({ code }) => start.test(code)).map(({ code, severity, role }) => `${code} ${severity}${role === 'deciding' ? '!' : ''}`).join(', ');
}
const numbersOf = (more: Partial<Situation>, code: string) => look(more).findings.find((finding) => finding.code === code)?.parameters;

describe('the size of the shaft', () => {
  // DIN 3760: h11, for 20 mm 0 / −0.130 (ISO 286). GB 9877.1: lip interference 0.5 to 1.3 mm over 5 up to 30 mm.
  test.each([
    [19.99999, 'fine', 'shaft-in-band good!'],
    [19.87001, 'fine', 'shaft-in-band good!'],
    [19.8699, 'fine', 'shaft-undersize-lip-still-touches care!'],
    [19.501, 'fine', 'shaft-undersize-lip-still-touches care!'],
    [19.4999, 'fine', 'shaft-is-no-listed-size bad!'],
    // 3/4 in = 19.05 mm
    [19.06, 'fine', 'shaft-is-an-inch-size bad!'],
    [18.01, 'fine', 'shaft-is-another-size bad!'],
    [20.0001, 'fine', 'shaft-oversize care!'],
    [20.5, 'fine', 'shaft-oversize care!'],
    [20.5001, 'fine', 'shaft-is-no-listed-size bad!'],
    [22.05, 'fine', 'shaft-is-another-size bad!'],
    // ± 0.02: proven within, on the edge from either side, proven without.
    [19.9, 'coarse', 'shaft-in-band good!'],
    [19.98, 'coarse', 'shaft-in-band good!'],
    [19.99, 'coarse', 'shaft-band-not-provable note!'],
    [20.01, 'coarse', 'shaft-band-not-provable care!'],
    [20.03, 'coarse', 'shaft-oversize care!'],
    [19.88, 'coarse', 'shaft-band-not-provable note!'],
    [19.86, 'coarse', 'shaft-band-not-provable care!'],
    [19.84, 'coarse', 'shaft-undersize-lip-still-touches care!'],
  ])('%d mm, %s: %s', (valueMm, how, expected) => {
    expect(told({ shaft: shaftOf(valueMm, how) }, /^shaft-(?!lead|rough|hard|soft|too)/)).toBe(expected);
  });

  test('what the lip still grips with is its interference less what the shaft lacks', () => {
    const numbers = numbersOf({ shaft: shaftOf(19.6) }, 'shaft-undersize-lip-still-touches');
    expect(numbers?.['lipLowUm']).toBeCloseTo(100, 3);
    expect(numbers?.['lipHighUm']).toBeCloseTo(900, 3);
    expect(numbers).toMatchObject({ shaftMm: 19.6, shaftNominalMm: 20, lowerLimitMm: 19.87, upperLimitMm: 20, band: 'h11' });
    expect(numbers?.['deviationUm']).toBeCloseTo(-400, 6);
    // 0.5 mm less than nominal: the least interference is used up.
    const gone = numbersOf({ shaft: shaftOf(19.5) }, 'shaft-undersize-lip-may-not-touch');
    expect(gone?.['lipLowUm']).toBeCloseTo(0, 3);
    expect(gone?.['lipHighUm']).toBeCloseTo(800, 3);
  });

  test('no lip interference is published up to 5 mm: undersize is all that can be said', () => {
    expect(told({ seal: { ...seal, shaftMm: 5, outsideMm: 16 }, shaft: shaftOf(4.9) }, /^shaft-under/)).toBe('shaft-undersize care!');
    expect(look({ seal: { ...seal, shaftMm: 5, outsideMm: 16 }, shaft: shaftOf(5) }).lipInterferenceMm).toBeNull();
    expect(look({ shaft: shaftOf(19.9) }).lipInterferenceMm?.low).toBeCloseTo(0.4, 9);
  });

  // DIN 3760: roundness within IT8, 33 µm for 20 mm (ISO 286-1, Table 1).
  test.each([[33, ''], [34, 'shaft-out-of-round care']])('out of round by %d µm: "%s"', (ovalityUm, expected) => {
    const points = [{ valueMm: 19.95, angleDeg: 0, depthMm: 5 }, { valueMm: 19.95 + ovalityUm / 1000, angleDeg: 90, depthMm: 5 }];
    expect(told({ shaft: { readings: [{ instrument: 'fine-outside', points }] } }, /round/)).toBe(expected);
    expect(told({ shaft: { readings: [{ instrument: 'coarse-outside', points }] } }, /round/)).toBe('');
  });

  test('not measured: the limits it must lie in', () => {
    expect(numbersOf({}, 'shaft-not-measured')).toMatchObject({ shaftNominalMm: 20, lowerLimitMm: 19.87, upperLimitMm: 20 });
  });
});

describe('the surfaces', () => {
  // DIN 3760: Ra 0.2 to 0.8 µm on the track; RMA OS-1: 0.2 to 0.43 µm.
  test.each([
    [0.19, 'iso-6194-1', 'shaft-too-smooth care'], [0.2, 'iso-6194-1', 'shaft-roughness-right good'], [0.8, 'iso-6194-1', 'shaft-roughness-right good'], [0.81, 'iso-6194-1', 'shaft-too-rough care'],
    [0.43, 'rma-metric', 'shaft-roughness-right good'], [0.44, 'rma-metric', 'shaft-too-rough care'], [0.44, 'rma-inch', 'shaft-too-rough care'], [0.19, 'rma-inch', 'shaft-too-smooth care'],
  ] as const)('Ra %d µm by %s: %s', (roughnessRaUm, requirementSet, expected) => {
    expect(told({ requirementSet, shaft: { roughnessRaUm } }, /^shaft-(?:too-(?:smooth|rough)|roughness)/)).toBe(expected);
  });

  // Bore: DIN 3760 3.2 µm for metal, 6.3 µm for rubber; RMA OS-1 2.5 and 3.75 µm.
  test.each([
    [3.2, 'metal-case', 'iso-6194-1', 'bore-roughness-right good'], [3.3, 'metal-case', 'iso-6194-1', 'bore-too-rough care'],
    [6.3, 'rubber-covered', 'iso-6194-1', 'bore-roughness-right good'], [6.4, 'rubber-covered', 'iso-6194-1', 'bore-too-rough care'],
    [2.5, 'metal-case', 'rma-metric', 'bore-roughness-right good'], [2.6, 'metal-case', 'rma-metric', 'bore-too-rough care'],
    [3.75, 'rubber-covered', 'rma-metric', 'bore-roughness-right good'], [3.8, 'rubber-covered', 'rma-metric', 'bore-too-rough care'],
  ] as const)('a bore of Ra %d µm, %s, by %s: %s', (roughnessRaUm, construction, requirementSet, expected) => {
    expect(told({ seal: { ...seal, construction }, requirementSet, bore: { roughnessRaUm } }, /^bore-(?:too-rough|roughness)/)).toBe(expected);
  });

  // DIN 3760: 45 HRC, from 4 m/s 55 HRC. On 20 mm, 4 m/s are 3 819.7 rpm.
  test.each([
    [45, undefined, 'shaft-hard-enough good'], [44, undefined, 'shaft-too-soft care'],
    [45, 3819, 'shaft-hard-enough good'], [54, 3820, 'shaft-too-soft care'], [55, 3820, 'shaft-hard-enough good'],
  ])('%d HRC at %s rpm: %s', (hardnessHrc, speedRpm, expected) => {
    expect(told({ shaft: { hardnessHrc }, ...(speedRpm === undefined ? {} : { running: { speedRpm } }) }, /^shaft-(?:hard|too-soft)/)).toBe(expected);
  });

  // RMA OS-1: lead up to 0.05°, either way.
  test.each([[0.05, ''], [0.06, 'shaft-has-lead care'], [-0.06, 'shaft-has-lead care'], [0, '']])('lead of %d°: "%s"', (leadAngleDeg, expected) => {
    expect(told({ shaft: { leadAngleDeg } }, /lead$/)).toBe(expected);
    expect(look({ shaft: { leadAngleDeg } }).notChecked).not.toContain('shaft-lead');
  });

  test('what was not measured is said to be open', () => {
    expect(look({}).notChecked).toEqual(expect.arrayContaining(['shaft-roughness', 'shaft-hardness', 'shaft-lead', 'bore-roughness']));
  });
});

describe('the pressure', () => {
  // DIN 3760: 0.05 MPa to 2.8 m/s and 1 000 rpm, 0.035 to 3.15 and 2 000, 0.02 to 5.6 and 3 000; RMA OS-1 beyond: 0.021 over 10.2 m/s.
  const at = (speedRpm: number, pressureMpa: number, more: Partial<Situation> = {}) => told({ running: { speedRpm, pressureMpa }, ...more }, /^pressure-(?!may|does|pushes)/);
  test.each([
    [0, 0.05, 'pressure-within good!'], [1000, 0.05, 'pressure-within good!'], [1001, 0.05, 'pressure-over bad!'], [1001, 0.035, 'pressure-within good!'],
    [2000, 0.035, 'pressure-within good!'], [2001, 0.035, 'pressure-over bad!'], [2001, 0.02, 'pressure-within good!'], [3000, 0.021, 'pressure-over bad!'],
    // A faster lip stands no more than a slower one: DIN's last row stays the bound where RMA would allow 0.048 or 0.035.
    [3001, 0.02, 'pressure-within good!'], [3001, 0.0201, 'pressure-over bad!'], [12_000, 0.02, 'pressure-within good!'], [12_000, 0.0211, 'pressure-over bad!'],
  ])('%d rpm and %d MPa: %s', (speedRpm, pressureMpa, expected) => { expect(at(speedRpm, pressureMpa)).toBe(expected); });

  test.each([[4870, 0.048, 'pressure-within good!'], [4870, 0.049, 'pressure-over bad!'], [4871, 0.048, 'pressure-over bad!'], [4871, 0.035, 'pressure-within good!'], [9741, 0.035, 'pressure-over bad!'], [9741, 0.021, 'pressure-within good!']])('by RMA: %d rpm and %d MPa: %s', (speedRpm, pressureMpa, expected) => {
    expect(at(speedRpm, pressureMpa, { requirementSet: 'rma-metric' })).toBe(expected);
    expect(at(speedRpm, pressureMpa, { requirementSet: 'rma-inch' })).toBe(expected);
  });

  test('where it swings the peak decides, either way; with the mean within it suits with care', () => {
    const swing = (pressureLowMpa: number, pressureHighMpa: number) => ({ running: { speedRpm: 900, pressureLowMpa, pressureHighMpa } });
    expect(told(swing(-0.04, 0.05), /^pressure-(?:within|peak|over)/)).toBe('pressure-within good!');
    expect(told(swing(-0.04, 0.06), /^pressure-(?:within|peak|over)/)).toBe('pressure-peak-over care!');
    expect(told(swing(-0.06, 0.04), /^pressure-(?:within|peak|over)/)).toBe('pressure-peak-over care!');
    expect(told(swing(0.05, 0.06), /^pressure-(?:within|peak|over)/)).toBe('pressure-over bad!');
    expect(numbersOf(swing(-0.06, 0.04), 'pressure-peak-over')).toMatchObject({ peakMpa: 0.06, limitMpa: 0.05, limitSet: 'din-3760' });
    expect(Number(numbersOf(swing(-0.06, 0.04), 'pressure-peak-over')?.['meanMpa'])).toBeCloseTo(-0.01, 12);
  });

  test('the limit of the maker of the seal comes first; without a speed nothing can be said', () => {
    expect(told({ seal: { ...seal, ratedPressureMpa: 0.3 }, running: { pressureMpa: 0.3 } }, /^pressure-(?:within|over|limit)/)).toBe('pressure-within good!');
    expect(numbersOf({ seal: { ...seal, ratedPressureMpa: 0.3 }, running: { pressureMpa: 0.31 } }, 'pressure-over')).toMatchObject({ limitMpa: 0.3, limitSet: 'maker' });
    expect(told({ running: { pressureMpa: 0.01 } }, /^pressure-(?:within|over|limit)/)).toBe('pressure-limit-unknown unknown!');
    expect(look({}).assumptions.map(({ name }) => name)).toContain('no-pressure');
  });

  test.each([
    ['inward', undefined, 'yes'], ['outward', undefined, 'no'], ['inward', 'inside', 'yes'], ['outward', 'outside', 'yes'], ['inward', 'outside', 'no'], [undefined, 'inside', 'not known'],
  ] as const)('suction on a lip that faces %s, fluid %s: facing it: %s', (lipFacing, fluidSide, facesSuction) => {
    const running = { speedRpm: 900, pressureMpa: -0.01 };
    expect(numbersOf({ running, ...(lipFacing === undefined ? {} : { lipFacing }), ...(fluidSide === undefined ? {} : { fluidSide }) }, 'suction-lifts-lip')).toEqual({ suctionMpa: 0.01, facesSuction });
  });
});

describe('the speed of the lip', () => {
  // Tribology Handbook B23: 8 000 rpm up to 35 mm; selection article 2018: 15 m/s else. NBR 14 m/s, FKM 38 m/s.
  test.each([
    [20, 8000, 'NBR', 'lip-speed-within good!'], [20, 8001, 'FKM', 'lip-speed-over-general care!'], [20, 13_369, 'NBR', 'lip-speed-over-general care!'], [20, 13_371, 'NBR', 'lip-speed-over bad!'],
    [35, 7640, 'NBR', 'lip-speed-over-rubber-bound care!'], [35, 7639, 'NBR', 'lip-speed-within good!'], [35, 8001, 'NBR', 'lip-speed-over bad!'],
    [36, 7957, 'FKM', 'lip-speed-within good!'], [36, 7958, 'FKM', 'lip-speed-over-general care!'], [36, 20_160, 'FKM', 'lip-speed-over bad!'],
  ] as const)('%d mm at %d rpm, %s: %s', (shaftMm, speedRpm, lipMaterial, expected) => {
    expect(told({ seal: { ...seal, shaftMm, outsideMm: shaftMm + 15, lipMaterial }, running: { speedRpm } }, /^(?:lip-speed|speed)/)).toBe(expected);
  });

  test('over 75 mm the handbook gives NBR 15 m/s, and the stricter 14 m/s decides; without a speed nothing is said', () => {
    const big = { ...seal, shaftMm: 80, outsideMm: 100, widthMm: 10 };
    expect(told({ seal: big, running: { speedRpm: 3342 } }, /^lip-speed/)).toBe('lip-speed-within good!');
    expect(told({ seal: big, running: { speedRpm: 3343 } }, /^lip-speed/)).toBe('lip-speed-over-rubber-bound care!');
    expect(told({}, /^speed/)).toBe('speed-missing unknown!');
  });
});

describe('edges, room and track', () => {
  // JIS B 2402-1: 2 mm off the diameter for shafts over 10 up to 20 mm. DIN 3760: a radius of 0.6 mm, with a dust lip 1 mm.
  test.each([
    [{ kind: 'chamfer', diameterReductionMm: 2 }, false, 'shaft-lead-in-enough good'], [{ kind: 'chamfer', diameterReductionMm: 1.9 }, false, 'shaft-lead-in-missing care'], [{ kind: 'chamfer' }, false, ''],
    [{ kind: 'radius', radiusMm: 0.6 }, false, 'shaft-edge-radius-enough good'], [{ kind: 'radius', radiusMm: 0.5 }, false, 'shaft-lead-in-missing care'], [{ kind: 'radius', radiusMm: 0.6 }, true, 'shaft-lead-in-missing care'], [{ kind: 'radius', radiusMm: 1 }, true, 'shaft-edge-radius-enough good'],
    [{ kind: 'radius' }, false, 'shaft-lead-in-missing care'], [{ kind: 'none' }, false, 'shaft-lead-in-missing care'],
  ] as const)('%o, dust lip %s: "%s"', (leadIn, hasDustLip, expected) => {
    const input: Partial<Situation> = { seal: { ...seal, hasDustLip }, shaft: { leadIn } };
    expect(told(input, /^shaft-(?:lead-in|edge)/)).toBe(expected);
    expect(look(input).notChecked.includes('shaft-lead-in')).toBe(expected === '');
  });

  test('the chamfer asked for is that of the shaft, and beyond the table it is left open', () => {
    expect(numbersOf({ shaft: { leadIn: { kind: 'none' } } }, 'shaft-lead-in-missing')).toEqual({ leastMm: 2 });
    expect(numbersOf({ seal: { ...seal, shaftMm: 21 }, shaft: { leadIn: { kind: 'none' } } }, 'shaft-lead-in-missing')).toEqual({ leastMm: 2.5 });
    expect(look({ seal: { ...seal, shaftMm: 490, outsideMm: 530, widthMm: 20 }, shaft: { leadIn: { kind: 'none' } } }).notChecked).toContain('shaft-lead-in');
  });

  // DIN 3760: t2 = b + 0.3.
  test.each([
    [7.3, undefined, 'bore-deep-enough good'], [7.29, undefined, 'bore-depth-tight note'], [7.29, { kind: 'flush' }, 'bore-deep-enough good'], [7, { kind: 'shoulder' }, 'bore-depth-tight note'], [6.99, { kind: 'flush' }, 'bore-too-shallow care!'],
    [9.3, { kind: 'depth', depthMm: 2 }, 'bore-deep-enough good'], [9.29, { kind: 'depth', depthMm: 2 }, 'bore-depth-tight note'], [8.99, { kind: 'depth', depthMm: 2 }, 'bore-too-shallow care!'], [9.1, { kind: 'depth', depthMm: 2.1 }, 'bore-depth-tight note'],
  ] as const)('a bore %d mm deep, seat %o: %s', (depthMm, seat, expected) => {
    expect(told({ bore: { depthMm }, ...(seat === undefined ? {} : { seat }) }, /^bore-(?:too-shallow|dep|deep)/)).toBe(expected);
  });

  test('a bore that is open inside may be shorter than the seal', () => {
    expect(told({ bore: { depthMm: 5, innerEnd: 'open' } }, /^bore-(?:shorter|too-shallow|deep)/)).toBe('bore-shorter-than-seal note');
    expect(numbersOf({ bore: { depthMm: 5, innerEnd: 'open' } }, 'bore-shorter-than-seal')).toMatchObject({ outMm: 2 });
    expect(told({ bore: { depthMm: 5, innerEnd: 'shoulder' } }, /^bore-(?:shorter|too-shallow|deep)/)).toBe('bore-too-shallow care!');
  });

  // mouth = bore + 2·length·tan(angle); DIN 3760: 10 to 20°.
  test('the mouth of the bore takes the largest seal, or says what chamfer is usual', () => {
    const mouth = (lengthMm: number, angleDeg?: number) => ({ bore: { ...boreOf(35), leadIn: { lengthMm, ...(angleDeg === undefined ? {} : { angleDeg }) } } });
    const given = look(mouth(1, 20));
    const numbers = given.findings.find(({ code }) => code === 'bore-mouth-takes-seal')?.parameters;
    expect(Number(numbers?.['mouthMm'])).toBeCloseTo(35 + 2 * Math.tan(Math.PI / 9), 4);
    expect(given.assumptions.map(({ name }) => name)).not.toContain('bore-chamfer-angle');
    expect(look(mouth(1)).assumptions.find(({ name }) => name === 'bore-chamfer-angle')?.value).toBe(10);
    expect(numbersOf(mouth(0.1, 10), 'bore-mouth-too-tight')).toMatchObject({ chamferLowMm: 0.7 });
    expect(numbersOf({ ...mouth(0.1, 10), seal: { ...seal, widthMm: 12 } }, 'bore-mouth-too-tight')).toMatchObject({ chamferLowMm: 1 });
    expect(look({ bore: boreOf(35) }).notChecked).toContain('bore-lead-in');
  });

  // Limits: 0.25 mm runout (RMA OS-1), 0.13 mm recommended (seal handbook), 0.25 mm offset (Tribology Handbook B23).
  test.each([[{ runoutMm: 0.25 }, 'runout-over-recommended care', 0.13], [{ runoutMm: 0.13 }, 'runout-within good', 0.25], [{ runoutMm: 0.26 }, 'runout-over care', 0.25], [{ offsetMm: 0.25 }, 'offset-within good', 0.25], [{ offsetMm: 0.26 }, 'offset-over care', 0.25]])('%o: %s, limit %d mm', (shaft, expected, limitMm) => {
    expect(told({ shaft }, /^(?:runout|offset)/)).toBe(expected);
    expect(numbersOf({ shaft }, expected.split(' ')[0] ?? '')?.['limitMm']).toBe(limitMm);
  });

  test.each([[true, 'track-catches-nail care!', 'lip-position-against-track'], [false, 'track-smooth good', null], [undefined, '', 'wear-track']] as const)('a nail that catches: %s', (catchesNail, expected, open) => {
    const input = { wearTrack: catchesNail === undefined ? {} : { catchesNail } };
    expect(told(input, /^track/)).toBe(expected);
    if (open === null) expect(look(input).notChecked).not.toContain('wear-track');
    else expect(look(input).notChecked).toContain(open);
  });
});

describe('the label of the bore', () => {
  // ISO 286: 35 H8 is 0 / +0.039.
  test.each([
    [35.0391, 'fine', 'bore-out-of-band care'], [35.0389, 'fine', 'bore-in-band good'], [35.0001, 'fine', 'bore-in-band good'], [34.9999, 'fine', 'bore-out-of-band care'],
    [35.0195, 'coarse', 'bore-band-not-provable note'], [35.03, 'coarse', 'bore-band-not-provable note'], [35.05, 'coarse', 'bore-band-not-provable note'], [35.06, 'coarse', 'bore-out-of-band care'], [34.99, 'coarse', 'bore-band-not-provable note'], [34.97, 'coarse', 'bore-out-of-band care'],
  ])('%d mm, %s: %s', (valueMm, how, expected) => {
    expect(told({ bore: boreOf(valueMm, how) }, /^bore-(?:in-band|out-of|band)/)).toBe(expected);
  });

  const places = (first: number, second: number, third: number) => [{ instrument: 'fine-inside', points: [{ valueMm: first, angleDeg: 0, depthMm: 2 }, { valueMm: second, angleDeg: 90, depthMm: 2 }, { valueMm: third, angleDeg: 0, depthMm: 6 }] }];
  test('oval or tapered by more than the band is wide: said, with both numbers', () => {
    expect(numbersOf({ bore: { readings: places(35, 35.04, 35) } }, 'bore-oval')?.['limitUm']).toBeCloseTo(39, 6);
    expect(Number(numbersOf({ bore: { readings: places(35, 35.04, 35) } }, 'bore-oval')?.['ovalityUm'])).toBeCloseTo(40, 3);
    expect(told({ bore: { readings: places(35, 35.0389, 35) } }, /^bore-oval/)).toBe('');
    expect(Number(numbersOf({ bore: { readings: places(35, 35, 35.045) } }, 'bore-tapered')?.['taperUm'])).toBeCloseTo(45, 3);
    expect(told({ bore: { readings: places(35.045, 35.045, 35) } }, /^bore-tapered/)).toBe('bore-tapered care');
    expect(told({ bore: { readings: places(35, 35, 35.0389) } }, /^bore-tapered/)).toBe('');
  });

  test.each([['metal-case', true, 'split-bore-wants-rubber care!'], ['metal-case', false, ''], ['rubber-covered', true, '']] as const)('%s in a split bore %s: "%s"', (construction, isSplit, expected) => {
    expect(told({ seal: { ...seal, construction }, bore: { isSplit } }, /^split/)).toBe(expected);
  });

  test('a bore of another size gets no label', () => {
    expect(told({ bore: boreOf(35.5) }, /^bore-out-of/)).toBe('bore-out-of-band care');
    expect(told({ bore: boreOf(35.51) }, /^bore-(?:in-band|out-of|band)/)).toBe('');
  });
});

describe('readings that cannot be trusted', () => {
  const slipped = { readings: [{ instrument: 'outside-micrometer', valuesMm: [19.98, 1.998] }] };
  const tooSmall = { readings: [{ instrument: 'inside-micrometer-rod', valuesMm: [14.99, 15] }] };

  test('are a reading to take again, not a wrong shaft', () => {
    const { verdict, findings, shaft, lipInterferenceMm } = look({ shaft: slipped, bore: boreOf(35.01) });
    expect({ verdict, shaft, lipInterferenceMm }).toEqual({ verdict: 'cannot tell', shaft: null, lipInterferenceMm: null });
    expect(findings.find(({ code }) => code === 'readings-contradict')?.missing).toBe('shaft.readings');
    expect(told({ shaft: slipped }, /^(shaft-(?!lead|rough)|readings)/)).toBe('readings-contradict unknown!');
  });

  test('nor a wrong bore, and the rest is judged', () => {
    expect(told({ bore: tooSmall, shaft: shaftOf(19.95) }, /^(bore-(?!mouth|rough|shall|depth)|readings|shaft-in)/)).toBe('readings-beyond-instrument unknown!, shaft-in-band good!');
  });

  test('of the seal itself leave the allowance of the standard, and ask for a reading', () => {
    const outsideReadings = [{ instrument: 'digital-calliper', valuesMm: [35.1, 53.1] }];
    const { verdict, sealOutsideMm } = look({ seal: { ...seal, outsideReadings }, shaft: shaftOf(20), bore: boreOf(35.01) });
    expect(verdict).toBe('cannot tell');
    expect(sealOutsideMm).toEqual(look({ bore: boreOf(35.01) }).sealOutsideMm);
  });
});
