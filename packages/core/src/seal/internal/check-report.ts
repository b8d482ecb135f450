import type { Assumption, Finding } from '../../result/index.js';
import type { CaseHold } from '../case-hold.js';
import type { HotHold } from '../hot-hold.js';
import type { RequirementSet } from '../requirement-set.js';
import type { Situation } from '../situation-field.js';
import type { Sizes } from '../sizes-of.js';

/** What every check of a seal may look at. */
export interface CheckContext {
  readonly situation: Situation;
  readonly set: RequirementSet;
  readonly sizes: Sizes;
  readonly hold: CaseHold | null;
  readonly hot: HotHold | null;
  /** Highest housing temperature that is given or, unmeasured, taken from the fluid. */
  readonly housingTemperatureC: number | null;
  readonly peripheralSpeedMps: number | null;
}

/** What one check has to say. */
interface CheckReport {
  readonly findings: readonly Finding[];
  readonly assumptions?: readonly Assumption[];
  readonly notChecked?: readonly string[];
}

export type Check = (context: CheckContext) => CheckReport;
