// Generated from reference/seal/lip-interference.csv by reference/generate.mjs: do not edit.
import type { Held } from '../held.js';

/** Lip interference of a new seal: shaft less free lip bore (source gb-9877-1-1988; held as: page). */
export const lipInterference: {
  readonly id: string;
  readonly source: string;
  readonly clause: string;
  readonly held: Held;
  readonly rowCount: number;
  readonly columns: {
    readonly overMm: readonly number[];
    readonly upToMm: readonly number[];
    readonly lipInterferenceMinMm: readonly number[];
    readonly lipInterferenceMaxMm: readonly number[];
  };
  readonly marks: Readonly<Record<never, readonly Held[]>>;
} = {
  id: 'lip-interference',
  source: 'gb-9877-1-1988',
  clause: 'lip interference',
  held: 'page',
  rowCount: 6,
  columns: {
    overMm: [5, 30, 60, 80, 130, 250],
    upToMm: [30, 60, 80, 130, 250, 400],
    lipInterferenceMinMm: [0.5, 0.8, 1, 1.2, 1.5, 2],
    lipInterferenceMaxMm: [1.3, 1.7, 2, 2.6, 3.3, 4],
  },
  marks: {
  },
};
