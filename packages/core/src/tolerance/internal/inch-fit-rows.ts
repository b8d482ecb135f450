import type { HeldMark } from '../../result/index.js';
import { ansiB41InchFits } from '../../tables/generated/ansi-b4-1-inch-fits.js';
import { findHalfOpenRow } from '../../tables/half-open-range.js';
import { markAt, rowAt } from '../../tables/table.js';
import { worstHeld } from './class-limits.js';

const limitColumns = ['holeUpperThou', 'holeLowerThou', 'shaftUpperThou', 'shaftLowerThou'] as const;

export const inchFitTable = ansiB41InchFits;

/** Limits of one class in one range of sizes, in thousandths of an inch. */
export interface InchFitRow {
  readonly overIn: number;
  readonly upToIn: number;
  readonly holeUpperThou: number;
  readonly holeLowerThou: number;
  readonly shaftUpperThou: number;
  readonly shaftLowerThou: number;
  readonly held: HeldMark;
}

interface InchFitGroup {
  readonly overIn: readonly number[];
  readonly upToIn: readonly number[];
  readonly rows: readonly InchFitRow[];
}

/** Rows of each class, in the order of the table. */
export const inchFitClasses: ReadonlyMap<string, InchFitGroup> = grouped();

/** The row of a class that holds a nominal size, or undefined outside its ranges. */
export function findInchFitRow(group: InchFitGroup, nominalIn: number): InchFitRow | undefined {
  return group.rows[findHalfOpenRow(group.overIn, group.upToIn, nominalIn)];
}


function grouped(): ReadonlyMap<string, InchFitGroup> {
  const groups = new Map<string, { overIn: number[]; upToIn: number[]; rows: InchFitRow[] }>();
  for (let at = 0; at < ansiB41InchFits.rowCount; at += 1) {
    const { fitClass, overIn, upToIn, holeUpperThou, holeLowerThou, shaftUpperThou, shaftLowerThou } = rowAt(ansiB41InchFits, at);
    let group = groups.get(fitClass);
    if (group === undefined) groups.set(fitClass, (group = { overIn: [], upToIn: [], rows: [] }));
    group.overIn.push(overIn);
    group.upToIn.push(upToIn);
    const held = worstHeld(...limitColumns.map((column) => markAt(ansiB41InchFits, column, at)));
    group.rows.push({ overIn, upToIn, holeUpperThou, holeLowerThou, shaftUpperThou, shaftLowerThou, held });
  }
  return groups;
}
