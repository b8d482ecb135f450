import { invalidInput, source, type HeldMark, type SourceReference } from '../result/index.js';
import { materials as table } from '../tables/generated/materials.js';
import { markAt } from '../tables/table.js';
import type { OwnMaterial } from './material-field.js';

/** Elastic and thermal data of one material. Expansion is a range: `low` and `high` enclose what is published. */
export interface Material {
  readonly id: string;
  readonly name: string;
  readonly family: string;
  readonly youngsModulusGpa: number;
  readonly poissonRatio: number;
  readonly expansionPerK: { readonly low: number; readonly probable: number; readonly high: number };
  /** True where no range is published and ± 3 % stands in: whoever uses the span lists it as an assumption. */
  readonly isExpansionSpanAssumed: boolean;
  readonly yieldMpa: number | null;
  readonly densityKgPerM3: number | null;
  readonly source: SourceReference;
}

const microPerK = 1e-6;
/** Scatter between handbooks where none prints a range. Common practice (no source). */
export const expansionScatterShare = 0.03;

/**
 * A material by id: the workshop's own first, then the table.
 * Where no range of the expansion coefficient is published, ± 3 % stands for the scatter between handbooks.
 * @throws CalculationError invalid-input (unknown id)
 * @source materials-handbooks (row by row; see `source`)
 * @example findMaterial('al-a380').youngsModulusGpa // 71
 */
export function findMaterial(id: string, own: readonly OwnMaterial[] = [], path = 'material'): Material {
  const mine = own.find((material) => material.id === id);
  if (mine !== undefined) {
    return {
      id,
      name: mine.name ?? id,
      family: 'own',
      youngsModulusGpa: mine.youngsModulusGpa,
      poissonRatio: mine.poissonRatio,
      expansionPerK: {
        low: mine.expansionMinPerK,
        probable: (mine.expansionMinPerK + mine.expansionMaxPerK) / 2,
        high: mine.expansionMaxPerK,
      },
      isExpansionSpanAssumed: false,
      yieldMpa: mine.yieldMpa ?? null,
      densityKgPerM3: mine.densityKgPerM3 ?? null,
      source: source('common-practice', 'practice', mine.source ?? 'stated in the workshop file'),
    };
  }
  const i = table.columns.id.indexOf(id);
  const { columns } = table;
  const youngsModulusGpa = columns.youngsModulusGpa[i];
  const poissonRatio = columns.poissonRatio[i];
  const expansion = columns.expansionUmPerMK[i];
  if (i < 0 || youngsModulusGpa == null || poissonRatio == null || expansion == null) {
    const known = `${likelyMaterials(id).join(', ')}, or a material of the workshop file`;
    throw invalidInput(path, id, `one of ${known}`, `unknown material; known are ${known}`);
  }
  return {
    id,
    name: columns.name[i] ?? id,
    family: columns.class[i] ?? '',
    youngsModulusGpa,
    poissonRatio,
    expansionPerK: {
      low: (columns.expansionMinUmPerMK[i] ?? expansion * (1 - expansionScatterShare)) * microPerK,
      probable: expansion * microPerK,
      high: (columns.expansionMaxUmPerMK[i] ?? expansion * (1 + expansionScatterShare)) * microPerK,
    },
    isExpansionSpanAssumed: columns.expansionMinUmPerMK[i] == null || columns.expansionMaxUmPerMK[i] == null,
    yieldMpa: columns.yieldMpa[i] ?? null,
    densityKgPerM3: columns.densityKgPerM3[i] ?? null,
    source: source(columns.rowSource[i] || table.source, markAt(table, 'expansionUmPerMK', i) satisfies HeldMark),
  };
}

/** Of the table those whose id, name or family holds the asked word, or is held by it; all of them where none does. */
function likelyMaterials(asked: string): readonly string[] {
  const plain = (text: string) => text.toLowerCase().replaceAll(/[^a-z0-9]/gu, '');
  const wanted = plain(asked);
  const { id, name, class: family } = table.columns;
  const near = wanted.length < 2 ? [] : id.filter((one, i) => [one, name[i] ?? '', family[i] ?? ''].map(plain).some((text) => text.includes(wanted) || wanted.includes(text)));
  return near.length > 0 ? near : id;
}

/**
 * Ids and names of the materials of the table.
 * @example materialNames().some(({ id }) => id === 'steel-c45') // true
 */
export function materialNames(): readonly { readonly id: string; readonly name: string; readonly family: string }[] {
  return table.columns.id.map((id, i) => ({ id, name: table.columns.name[i] ?? id, family: table.columns.class[i] ?? '' }));
}
