export * from './generated/index.js';
export { findHalfOpenRow } from './half-open-range.js';
export type { Held } from './held.js';
export type { SourceEntry } from './source-entry.js';
export { markAt, rowAt, rowsOf, type GeneratedTable, type RowOf } from './table.js';
export { namedValue, type NamedValue } from './named-value.js';
