import { ratio, type Ratio } from './ratio.js';

/** A unit: value in the base unit = value × factor + offset. */
export interface Unit {
  readonly name: string;
  readonly factor: Ratio;
  readonly offset?: Ratio;
}

/** What can be written for one kind of quantity. */
export interface Kind {
  readonly name: string;
  readonly units: ReadonlyMap<string, Unit>;
  readonly baseUnit: string;
  /** Names of units as people should write them, for messages. */
  readonly understood: string;
  readonly examples: string;
  /** A mark before exactly three digits is refused: it may be a thousands mark. */
  readonly isCount: boolean;
  readonly allowsSums: boolean;
  /** Units of allowances, which a size without a unit does not share. */
  readonly fineUnits?: readonly string[];
}

type Spelling = readonly [names: string, factor: Ratio, offset?: Ratio];

function kind(options: Omit<Kind, 'units'>, spellings: readonly Spelling[]): Kind {
  const units = new Map<string, Unit>();
  for (const [names, factor, offset] of spellings) {
    const all = names.split(' ');
    const name = all[0] ?? '';
    for (const spelling of all) units.set(spelling, offset === undefined ? { name, factor } : { name, factor, offset });
  }
  return { ...options, units };
}

const inch = ratio(127, 5);

export const lengthKind = kind(
  { name: 'length', baseUnit: 'mm', understood: 'mm, cm, m, µm, in, thou, ft', examples: '19.05, 19,05 mm, 3/4 in, 1 3/8", 10 µm, 25 + 0.03', isCount: false, allowsSums: true, fineUnits: ['µm', 'thou'] },
  [
    ['mm MM millimetre millimeter', ratio(1)],
    ['cm', ratio(10)],
    ['m', ratio(1000)],
    ['µm μm um mu micron microns', ratio(1, 1000)],
    ['in " ″ ” inch inches in.', inch],
    ["ft ' ′ ’ foot feet", ratio(1524, 5)],
    ['thou mil mils', ratio(127, 5000)],
  ],
);

export const deviationKind = kind(
  { name: 'deviation', baseUnit: 'µm', understood: 'µm, mm, in, thou', examples: '+35, -12 µm, 0.03 mm, 1.5 thou', isCount: false, allowsSums: true },
  [
    ['µm μm um mu micron microns', ratio(1)],
    ['mm', ratio(1000)],
    ['in " ″ ” inch inches', ratio(25_400)],
    ['thou mil mils', ratio(127, 5)],
  ],
);

export const temperatureKind = kind(
  { name: 'temperature', baseUnit: '°C', understood: '°C, °F, K', examples: '80, 80 °C, 180 °F, 350 K', isCount: false, allowsSums: false },
  [
    ['°C C ℃ degC °c', ratio(1)],
    ['°F F ℉ degF °f', ratio(5, 9), ratio(-160, 9)],
    ['K', ratio(1), ratio(-27_315, 100)],
  ],
);

export const temperatureDifferenceKind = kind(
  { name: 'temperature difference', baseUnit: 'K', understood: 'K, °C, °F', examples: '50, 50 K, 90 °F', isCount: false, allowsSums: true },
  [
    ['K °C C', ratio(1)],
    ['°F F', ratio(5, 9)],
  ],
);

export const rotationalSpeedKind = kind(
  { name: 'rotational speed', baseUnit: 'rpm', understood: 'rpm, 1/min, Hz', examples: '7800, 7800 rpm, 1450 1/min, 50 Hz', isCount: true, allowsSums: false },
  [
    ['rpm RPM r/min rev/min 1/min /min min-1 min⁻¹ U/min', ratio(1)],
    ['Hz 1/s rev/s r/s s-1 s⁻¹', ratio(60)],
  ],
);

export const surfaceSpeedKind = kind(
  { name: 'surface speed', baseUnit: 'm/s', understood: 'm/s, ft/min, km/h', examples: '8.17 m/s, 1600 ft/min', isCount: true, allowsSums: false },
  [
    ['m/s', ratio(1)],
    ['ft/min fpm', ratio(127, 25_000)],
    ['km/h', ratio(5, 18)],
    ['m/min', ratio(1, 60)],
  ],
);

export const pressureKind = kind(
  { name: 'pressure', baseUnit: 'MPa', understood: 'MPa, bar, mbar, kPa, Pa, psi', examples: '0.05 MPa, 0.5 bar, 7 psi, -0.3 bar', isCount: false, allowsSums: false },
  [
    ['MPa N/mm² N/mm2', ratio(1)],
    ['kPa', ratio(1, 1000)],
    ['Pa', ratio(1, 1_000_000)],
    ['bar', ratio(1, 10)],
    ['mbar hPa', ratio(1, 10_000)],
    // 1 lbf = 4.4482216152605 N, 1 in² = 645.16 mm²
    ['psi lbf/in²', ratio(44_482_216_152_605n, 6_451_600_000_000_000n)],
  ],
);

export const hoursKind = kind(
  { name: 'time', baseUnit: 'h', understood: 'h, min, s, days, weeks', examples: '100, 100 h, 30 min, 2 days', isCount: true, allowsSums: true },
  [
    ['h hr hrs hour hours Hours', ratio(1)],
    ['min mins minutes', ratio(1, 60)],
    ['s sec seconds', ratio(1, 3600)],
    ['d day days', ratio(24)],
    ['week weeks', ratio(168)],
  ],
);

export const forceKind = kind(
  { name: 'force', baseUnit: 'N', understood: 'N, kN, kgf, lbf', examples: '800 N, 1.2 kN, 200 lbf', isCount: false, allowsSums: false },
  [
    ['N', ratio(1)],
    ['kN', ratio(1000)],
    ['kgf kp', ratio(980_665, 100_000)],
    ['lbf', ratio(44_482_216_152_605n, 10_000_000_000_000n)],
  ],
);

export const angleKind = kind(
  { name: 'angle', baseUnit: '°', understood: '°, deg', examples: '15, 15°, 22,5 deg', isCount: false, allowsSums: true },
  [['° deg degree degrees', ratio(1)]],
);

export const allKinds: readonly Kind[] = [lengthKind, deviationKind, temperatureKind, temperatureDifferenceKind, rotationalSpeedKind, surfaceSpeedKind, pressureKind, hoursKind, forceKind, angleKind];
