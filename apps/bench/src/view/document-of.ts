import type { JobSheetOutput } from '@seatwright/core/job';
import { english, jobSheetDocument, type SheetBlock, type WritingStyle } from '@seatwright/core/wording';

const written = new WeakMap<JobSheetOutput, { readonly style: WritingStyle; readonly blocks: readonly SheetBlock[] }>();

/** The sheet in words; written once for all the blocks that show a part of it. */
export function documentOf(output: JobSheetOutput, style: WritingStyle): readonly SheetBlock[] {
  const known = written.get(output);
  if (known?.style === style) return known.blocks;
  const blocks = jobSheetDocument(output, english, style);
  written.set(output, { style, blocks });
  return blocks;
}
