// Generated from reference/ and packages/core/package.json by reference/generate.mjs: do not edit.

/** Edition of the tables: year and month, and a hash over every table and source. Another cell is another edition. */
export const tablesEdition = '2026.11-5bc746f3';
/** Version of this library. */
export const libraryVersion = '0.1.0';
