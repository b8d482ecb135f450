import { readFileSync } from 'node:fs';
import type { Plugin } from 'vite';
import { jobSheetInSteps } from '@seatwright/core/job';
import { sourceDesignations, sourceTitles } from '@seatwright/core/tables';
import { english, german, type Catalogue } from '@seatwright/core/wording';
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

const words = at('../../packages/core/src/wording/');
const builtWords = at('../../packages/core/dist/wording/');
const titlesModule = at('../../packages/core/src/tables/generated/source-titles.ts');

/** A language, the file that takes what is seldom said of it, and how that file comes by the rest: a language that is fetched lies in one file with what asks for it. */
const languages = [
  { catalogue: english, name: 'english', later: at('./src/words/later-words.ts'), first: `import { english } from ${JSON.stringify(`${words}english/index.ts`)};` },
  { catalogue: german, name: 'german', later: at('./src/words/german-later.ts'), first: `import { germanSentences } from ${JSON.stringify(at('./src/words/german-sentences.ts'))}; const german = germanSentences.catalogue; export const address = import.meta.url;` },
] as const;

/**
 * The sentences of each language in two parts: what the sheets of the samples say is fetched with the page, the rest once a sheet stands, and
 * before the first one that says any of it (`src/sheet/is-spoken.ts`). Three sentences in four are seldom said, and they were a tenth of what a
 * phone fetches for a seal job in English, a sixth of it in German. The names of sources are parted alike; what steps of the working are called
 * comes with the rest.
 */
export async function wordsInTwo(): Promise<Plugin> {
  const said = saidBySamples();
  const modules: Record<string, string> = {};
  const titles = inTwo(sourceTitles, said);
  const designations = inTwo(sourceDesignations, said);
  modules[titlesModule] = `export const sourceTitles = ${JSON.stringify(titles.first)}; export const sourceDesignations = ${JSON.stringify(designations.first)};`;
  for (const { catalogue, name, later, first: takesFirst } of languages) {
    const silent = await saidByNoSheet(name);
    const first: Record<string, unknown> = { ...catalogue };
    const laterLines: string[] = [takesFirst];
    const add = (to: string, rest: Words): void => { if (Object.keys(rest).length > 0) laterLines.push(`Object.assign(${to}, ${JSON.stringify(rest)});`); };
    for (const sort of [...sortsInTwo, ...sortsTogether]) {
      const known = Object.fromEntries(Object.entries(catalogue[sort]).filter(([code, sentence]) => silent.get(code) !== JSON.stringify(sentence)));
      const parts = (sortsTogether as readonly string[]).includes(sort) ? { first: known, rest: {} } : inTwo(known, said);
      first[sort] = parts.first;
      add(`${name}.${sort}`, parts.rest);
    }
    const names = await namesInTwo(catalogue, name);
    first['names'] = names.first;
    add(`${name}.names`, names.rest);
    if (catalogue === english) {
      laterLines.push(`import { sourceDesignations, sourceTitles } from ${JSON.stringify(titlesModule)};`);
      add('sourceTitles', titles.rest);
      add('sourceDesignations', designations.rest);
    }
    modules[`${words}${name}/index.ts`] = `export const ${name} = ${JSON.stringify(first)};`;
    modules[later] = laterLines.join('\n');
  }
  return { name: 'words-in-two', enforce: 'pre', load: (id) => modules[id] ?? null };
}

type Words = Readonly<Record<string, unknown>>;

function inTwo(known: Words, said: ReadonlySet<string>): { readonly first: Words; readonly rest: Words } {
  const [first, rest] = [true, false].map((isFirst) => Object.fromEntries(Object.entries(known).filter(([code]) => said.has(code) === isFirst)));
  return { first: first ?? {}, rest: rest ?? {} };
}

/** What steps of the working are called is needed with the working; what else has a name of the kind is not. */
async function namesInTwo({ names }: Catalogue, name: string): Promise<{ readonly first: Words; readonly rest: Words }> {
  if (name === 'english') return { first: names, rest: {} };
  const ofWorking = Object.values((await import(`${builtWords}${name}/working.js`)) as Readonly<Record<string, Words>>).flatMap((group) => Object.keys(group));
  const elsewhere = (await Promise.all(['errors', 'fields', 'names'].map((room) => import(`${builtWords}${name}/${room}.js`) as Promise<Readonly<Record<string, Words>>>))).flatMap((room) => Object.values(room).flatMap((group) => Object.keys(group)));
  const later = new Set(ofWorking.filter((text) => !elsewhere.includes(text)));
  return inTwo(names, new Set(Object.keys(names).filter((text) => !later.has(text))));
}

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
async function saidByNoSheet(language: string): Promise<ReadonlyMap<string, string>> {
  const silent = new Map<string, string>();
  for (const room of notOnASheet) {
    const words = (await import(`${builtWords}${language}/${room}.js`)) as Readonly<Record<string, Readonly<Record<string, Catalogue['values']>>>>;
    for (const sorts of Object.values(words)) for (const group of Object.values(sorts)) for (const [code, said] of Object.entries(group)) silent.set(code, JSON.stringify(said));
  }
  return silent;
}
