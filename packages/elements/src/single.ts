// Everything in one file for pages without a build: all elements, registered, and every calculation.
export * from './all.js';
export { CalculationError, libraryVersion, tablesEdition } from '@seatwright/core';
export { jobSheetDocument, english, writeHtml, writeMarkdown, writeText } from '@seatwright/core/wording';
export { calculations, findCalculation } from '@seatwright/core/registry';
