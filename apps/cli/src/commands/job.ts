import { findPosition, jobSheet, positionsNamed, positionsOf, readWorkshopFile, type FoundPosition } from '@seatwright/core/job';
import { jobSheetDocument, styleOf, writeHtml, writeMarkdown, writeText, type Catalogue } from '@seatwright/core/wording';
import { catalogueOf } from '../internal/languages.js';
import { readInput } from '../internal/read-input.js';
import { workingText } from '../internal/write-answer.js';
import { answerJson } from '../internal/stamp.js';

interface Options {
  readonly position?: string;
  readonly machine?: string;
  readonly asOf?: string;
  readonly format?: string;
  readonly language?: string;
  readonly explain?: boolean;
  readonly json?: boolean;
}

type Writer = (document: ReturnType<typeof jobSheetDocument>, catalogue: Catalogue) => string;

const writers: ReadonlyMap<string, Writer> = new Map<string, Writer>([
  ['text', (document, { labels }) => writeText(document, undefined, labels['caution'])],
  ['markdown', (document) => writeMarkdown(document)],
  ['html', (document, { language }) => writeHtml(document, language)],
]);

/** The job sheet of one position, or of every position when none is named. */
export async function job(file: string, options: Options): Promise<void> {
  const write = writers.get(options.format ?? 'text');
  if (write === undefined) throw new Error(`--format: unknown "${options.format ?? ''}"; known are ${[...writers.keys()].join(', ')}`);
  const catalogue = await catalogueOf(options.language ?? 'en');
  const content = await readInput(file);
  const { workshop } = readWorkshopFile(content);
  const raw: unknown = JSON.parse(content.startsWith('\uFEFF') ? content.slice(1) : content);
  const wanted = options.position === undefined ? positionsNamed(workshop, options) : [findPosition(workshop, options)];
  const style = styleOf(catalogue, workshop.lengthUnit ?? 'mm');
  const [once, twice] = [new Set<string>(), new Set<string>()];
  for (const name of positionsOf(workshop).map(fullName)) (once.has(name) ? twice : once).add(name);
  for (const found of wanted) {
    const { machine, position } = found;
    const input = { workshop: twice.has(fullName(found)) ? withOnly(raw, found.path) : raw, machine: machine.name, position: position.name, ...(options.asOf === undefined ? {} : { asOfDate: options.asOf }) };
    const output = jobSheet.run(input);
    const working = options.explain === true ? jobSheet.explain(input, output) : undefined;
    if (options.json === true) process.stdout.write(`${answerJson(output, working)}\n`);
    else process.stdout.write(write(jobSheetDocument(output, catalogue, style), catalogue) + (working === undefined ? '' : workingText(working, catalogue)) + (wanted.length > 1 ? '\n\n' : ''));
  }
}

function fullName({ machine, position }: FoundPosition): string {
  return JSON.stringify([machine.name, position.name]);
}

/** The file with one position alone: where several are called the same, each still has its sheet. */
function withOnly(raw: unknown, path: string): unknown {
  const [m = 0, p = 0] = [...path.matchAll(/\d+/gu)].map(([digits]) => Number(digits));
  const file = raw as { readonly machines: readonly { readonly positions: readonly unknown[] }[] };
  const machine = file.machines[m];
  return { ...file, machines: [{ ...machine, positions: [machine?.positions[p]] }] };
}
