import { readFileSync } from 'node:fs';
import type { Plugin } from 'vite';
import { jobSheetInSteps } from '@seatwright/core/job';
import { sourceDesignations, sourceTitles } from '@seatwright/core/tables';
import { english, type Catalogue } from '@seatwright/core/wording';
import { samples, sampleAddress } from './src/samples.ts';

const at = (path: string): string => new URL(path, import.meta.url).pathname;

/** Rooms of sentences about calculations that the page does not make; what stands in for them is `src/words/not-on-a-sheet.ts`. */
export const notOnASheet = ['hold-and-draw', 'leaks', 'measures', 'sizes-and-heat', 'taking-apart'] as const;

/** What a sheet says a tenth of. */
const sortsInTwo = ['findings', 'steps', 'cautions', 'notChecked', 'assumed', 'effects'] as const;
/** What forms show before there is a sheet. */
const sortsTogether = ['readings', 'values'] as const;

/** Any day: what is due is told in labels, which are not parted. */
const asOfDate = '2026-01-01';

/** Samples of seals alone; a sheet with a bearing waits for the rest anyway. */
const sealSamples = samples.filter((sample) => !sample.startsWith('bearing-'));

/**
 * The English sentences in two parts: what the sheets of the samples say comes with the page, the rest with what judges bearings and shows
 * the working (`src/sheet/whole-sheet.ts`), before the first sheet that says any of it (`src/sheet/is-spoken.ts`). Three sentences in four are
 * seldom said, and they were a tenth of what a phone fetches for a seal job. The names of sources are parted alike.
 */
export async function wordsInTwo(): Promise<Plugin> {
  const said = saidBySamples();
  const silent = await saidByNoSheet();
  const catalogue: Record<string, unknown> = { ...english };
  const laterLines = [`import { english } from ${JSON.stringify(catalogueModule)};`, `import { sourceDesignations, sourceTitles } from ${JSON.stringify(titlesModule)};`];
  const part = (known: Readonly<Record<string, unknown>>, name: string): Readonly<Record<string, unknown>> => {
    const [first, later] = [true, false].map((isFirst) => Object.fromEntries(Object.entries(known).filter(([code]) => said.has(code) === isFirst)));
    laterLines.push(`Object.assign(${name}, ${JSON.stringify(later)});`);
    return first ?? {};
  };
  for (const sort of [...sortsInTwo, ...sortsTogether]) {
    const known = Object.fromEntries(Object.entries(english[sort]).filter(([code, words]) => silent.get(code) !== JSON.stringify(words)));
    catalogue[sort] = (sortsTogether as readonly string[]).includes(sort) ? known : part(known, `english.${sort}`);
  }
  const modules: Readonly<Record<string, string>> = {
    [catalogueModule]: `export const english = ${JSON.stringify(catalogue)};`,
    [titlesModule]: `export const sourceTitles = ${JSON.stringify(part(sourceTitles, 'sourceTitles'))}; export const sourceDesignations = ${JSON.stringify(part(sourceDesignations, 'sourceDesignations'))};`,
    [laterModule]: laterLines.join('\n'),
  };
  return { name: 'words-in-two', enforce: 'pre', load: (id) => modules[id] ?? null };
}

const catalogueModule = at('../../packages/core/src/wording/english/index.ts');
const titlesModule = at('../../packages/core/src/tables/generated/source-titles.ts');
const laterModule = at('./src/words/later-words.ts');

function saidBySamples(): ReadonlySet<string> {
  const said = new Set<string>();
  for (const sample of sealSamples) {
    const workshop = JSON.parse(readFileSync(at(`public/${sampleAddress(sample)}`), 'utf8')) as { readonly machines: readonly { readonly name: string; readonly positions: readonly { readonly name: string }[] }[] };
    for (const { name: machine, positions } of workshop.machines) {
      for (const { name: position } of positions) {
        const steps = jobSheetInSteps({ workshop, machine, position, asOfDate });
        let step = steps.next();
        while (step.done !== true) step = steps.next();
        noteTexts(step.value, said);
      }
    }
  }
  return said;
}

function noteTexts(value: unknown, texts: Set<string>): void {
  if (typeof value === 'string') texts.add(value);
  else if (typeof value === 'object' && value !== null) for (const part of Object.values(value)) noteTexts(part, texts);
}

/** Code and words of the rooms that no sheet speaks of; a code that another room speaks of too has other words there. */
async function saidByNoSheet(): Promise<ReadonlyMap<string, string>> {
  const silent = new Map<string, string>();
  for (const room of notOnASheet) {
    const words = (await import(at(`../../packages/core/dist/wording/english/${room}.js`))) as Readonly<Record<string, Readonly<Record<string, Catalogue['values']>>>>;
    for (const sorts of Object.values(words)) for (const group of Object.values(sorts)) for (const [code, said] of Object.entries(group)) silent.set(code, JSON.stringify(said));
  }
  return silent;
}
