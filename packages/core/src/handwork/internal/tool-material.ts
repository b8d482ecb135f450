import { findMaterial, type OwnMaterial } from '../../material/index.js';
import { commonPractice, source, type SourceReference } from '../../result/index.js';
import { materials as table } from '../../tables/generated/materials.js';
import { markAt } from '../../tables/table.js';
import { practiceValue } from './practice-value.js';

/** What a driver is made of, as far as its strength goes. */
export interface ToolMaterial {
  readonly id: string;
  readonly youngsModulusMpa: number;
  readonly poissonRatio: number;
  /** Stress at which the wall gives way; the lower end of what is published. null where nobody knows. */
  readonly strengthMpa: number | null;
  /** How many times the push the wall should stand. */
  readonly wantedReserveFactor: number;
  readonly isPlastic: boolean;
  /** Turns brittle near 5 °C. */
  readonly isBrittleCold: boolean;
  readonly strengthSource: SourceReference;
}

/** Workshop words for materials whose exact kind nobody knows: the weakest of that family in the table. */
const workshopWords: Readonly<Record<string, string>> = {
  steel: 'steel-c20',
  copper: 'cu-etp',
  brass: 'brass-cuzn30',
  aluminium: 'al-alsi9cu3',
  pvc: 'pvc-u',
  pe: 'pe-hd',
};

/** [MPa] Compressive strength of PVC-U by ASTM D695 on property sheets. */
const pvcCompressive = practiceValue('pvc-compressive', 'Mpa');

/** A third of the test strength for plastics, half the least yield strength for metals. */
const reserve = { plastic: practiceValue('reserve-plastic', 'Factor').low, metal: practiceValue('reserve-metal', 'Factor').low } as const;

/** The material of a tool: a workshop word, an id of the table, or one of the workshop file. */
export function toolMaterial(word: string, own: readonly OwnMaterial[] = [], path = 'material'): ToolMaterial {
  const mine = own.find((material) => material.id === word);
  const id = mine === undefined ? (workshopWords[word.toLowerCase()] ?? word) : word;
  const material = findMaterial(id, own, path);
  const isPlastic = material.family === 'plastic' || (mine !== undefined && mine.youngsModulusGpa < 10);
  return {
    id,
    youngsModulusMpa: material.youngsModulusGpa * 1000,
    poissonRatio: material.poissonRatio,
    ...strengthOf(id, mine?.yieldMpa ?? null, mine !== undefined),
    wantedReserveFactor: isPlastic ? reserve.plastic : reserve.metal,
    isPlastic,
    isBrittleCold: id === 'pvc-u',
  };
}

function strengthOf(id: string, ownYieldMpa: number | null, isOwn: boolean): Pick<ToolMaterial, 'strengthMpa' | 'strengthSource'> {
  if (isOwn) return { strengthMpa: ownYieldMpa, strengthSource: commonPractice };
  if (id === 'pvc-u') return { strengthMpa: pvcCompressive.low, strengthSource: pvcCompressive.source };
  const i = table.columns.id.indexOf(id);
  const least = table.columns.yieldMinMpa[i];
  const strengthMpa = least ?? table.columns.yieldMpa[i] ?? table.columns.tensileMpa[i] ?? null;
  const column = least == null ? 'yieldMpa' : 'yieldMinMpa';
  return { strengthMpa, strengthSource: i < 0 ? commonPractice : source(table.columns.rowSource[i] || table.source, markAt(table, column, i), table.columns.yieldCondition[i] ?? '') };
}
