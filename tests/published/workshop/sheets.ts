import type { Sheet } from '../ledger/sheet.js';
import { tableSheets } from '../ledger/table-values.js';

/** Tubes, screws, instruments, materials and single values of the workshop: looked up, not computed. */
export const workshop: readonly Sheet[] = tableSheets(new URL('./table-values.csv', import.meta.url));
