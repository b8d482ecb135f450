import type { JobSheetOutput } from '@seatwright/core/job';
import { jobSheetDocument, type Catalogue, type SheetBlock, type WritingStyle } from '@seatwright/core/wording';
import { sentences } from '../words/sentences.js';

const written = new WeakMap<JobSheetOutput, { readonly style: WritingStyle; readonly by: Catalogue; readonly blocks: readonly SheetBlock[] }>();

/** The sheet in words; written once for all the blocks that show a part of it. */
export function documentOf(output: JobSheetOutput, style: WritingStyle): readonly SheetBlock[] {
  const known = written.get(output);
  if (known?.style === style && known.by === sentences) return known.blocks;
  const blocks = jobSheetDocument(output, sentences, style);
  written.set(output, { style, by: sentences, blocks });
  return blocks;
}
