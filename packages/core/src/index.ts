export * from './result/index.js';
export { libraryVersion, tablesEdition } from './tables/generated/edition.js';
