import { appendChange, findPosition, readWorkshop, serviceRecord } from '@seatwright/core/job';
import { invalidInput } from '@seatwright/core';
import { fill, markedFinding, styleOf, wordFor, writeFinding, writeValue, type Catalogue, type WritingStyle } from '@seatwright/core/wording';
import { catalogueOf } from '../internal/languages.js';
import { listWordsOf } from '../internal/list-words.js';
import { readInput } from '../internal/read-input.js';
import { replaceWhole } from '../internal/replace-whole.js';
import { answerJson, stampLine } from '../internal/stamp.js';

interface Options {
  readonly position?: string;
  readonly machine?: string;
  readonly date?: string;
  readonly hours?: string;
  readonly renewed?: string;
  readonly bore?: readonly string[];
  readonly boreWith?: string;
  readonly shaft?: readonly string[];
  readonly shaftWith?: string;
  readonly found?: string;
  readonly fitted?: string;
  readonly oldDepth?: readonly string[];
  readonly depth?: readonly string[];
  readonly note?: string;
  readonly out?: string;
  readonly asOf?: string;
  readonly language?: string;
  readonly json?: boolean;
}

/** The record of a position; with `--date` one renewal more is written to its end first. */
export async function record(file: string, options: Options): Promise<void> {
  await catalogueOf(options.language ?? 'en');
  if (options.date === undefined) {
    if (options.out !== undefined) throw invalidInput('--date', undefined, 'the day of the change, YYYY-MM-DD', 'missing; --out writes a change');
    return show(parsed(await readInput(file)), options);
  }
  const grown = (content: string) => {
    const before = parsed(content);
    return appendChange(before, placeIn(before, options), changeOf(options));
  };
  const target = options.out ?? file;
  if (target === '-') {
    process.stdout.write(written(grown(await readInput(file))));
    return;
  }
  // Read again while nobody else may write: what another one wrote in between stays.
  let after: unknown;
  await replaceWhole(target, async () => written((after = grown(await readInput(file)))));
  return show(after, options);
}

function written(workshop: unknown): string {
  return `${JSON.stringify(workshop, null, 2)}\n`;
}

function parsed(content: string): unknown {
  try {
    return JSON.parse(content.replace('\uFEFF', '')) as unknown;
  } catch (error) {
    throw invalidInput('', content.slice(0, 40), 'a workshop file in JSON', `not JSON: ${error instanceof Error ? error.message.replace(/\s+/gu, ' ') : String(error)}`);
  }
}

function placeIn(workshop: unknown, options: Options) {
  const { machine, position } = findPosition(readWorkshop(workshop).workshop, options);
  return { machine: machine.name, position: position.name };
}

async function show(workshop: unknown, options: Options): Promise<void> {
  const catalogue = await catalogueOf(options.language ?? 'en');
  const style = styleOf(catalogue, readWorkshop(workshop).workshop.lengthUnit ?? 'mm');
  const output = serviceRecord.run({ workshop, ...placeIn(workshop, options), ...(options.asOf === undefined ? {} : { asOfDate: options.asOf }) });
  process.stdout.write(options.json === true ? `${answerJson(output)}\n` : `${textOf(output, catalogue, style)}\n${stampLine}`);
}

function changeOf({ date, hours, renewed, bore, boreWith, shaft, shaftWith, found, fitted, oldDepth, depth, note }: Options): object {
  const readings = (name: string, values: readonly string[] | undefined, instrument: string | undefined) => {
    if (values === undefined) return undefined;
    if (instrument === undefined) throw invalidInput(`--${name}-with`, undefined, 'the instrument that the readings were taken with', `missing; a reading without its instrument says little`);
    return [{ instrument, valuesMm: values }];
  };
  const change = { date, hourMeterHours: hours, renewed: renewed ?? 'seal', boreReadings: readings('bore', bore, boreWith), shaftReadings: readings('shaft', shaft, shaftWith), found, fitted, oldDepthMm: oldDepth, depthMm: depth, note };
  return Object.fromEntries(Object.entries(change).filter(([, value]) => value !== undefined));
}

function textOf(output: ReturnType<typeof serviceRecord.compute>, catalogue: Catalogue, style: WritingStyle): string {
  const words = listWordsOf(catalogue);
  const say = (template: string, parameters: Readonly<Record<string, number | string>>) => fill(template, parameters, catalogue, style);
  /** As the meter shows it, tenths and all. */
  const hours = (value: number) => `${writeValue('plain', Math.round(value * 10) / 10, style)} h`;
  const lines = [`${words.record}: ${output.machine}, ${output.position}`, ''];
  for (const { date, hourMeterHours, sinceBeforeHours, boreMm, shaftMm } of output.changes) {
    const about = [
      hourMeterHours === null ? null : hours(hourMeterHours),
      sinceBeforeHours === null ? null : words.after.replace('{hours}', hours(sinceBeforeHours)),
      boreMm === null ? null : say(words.bore, { sizeMm: boreMm }),
      shaftMm === null ? null : say(words.shaftSize, { sizeMm: shaftMm }),
    ];
    lines.push(`  ${wordFor(date, catalogue)}  ${about.filter((one) => one !== null).join(', ')}`);
  }
  if (output.changes.length > 0) lines.push('');
  const { lipTravelToDateKm, dueBy, dueAtHours, dueDate } = output;
  if (lipTravelToDateKm !== null) lines.push(say(words.lipTravel, { lipTravelKm: lipTravelToDateKm }));
  if (dueBy !== null) {
    const when = [dueAtHours === null ? null : words.at.replace('{hours}', hours(dueAtHours)), dueDate === null ? null : say(words.onDay, { day: dueDate })].filter((one) => one !== null).join(', ');
    lines.push(words.dueNext.replace('{when}', when).replace('{by}', words.dueBy[dueBy]));
  }
  for (const finding of output.findings) {
    const { todo } = writeFinding(finding, catalogue, style);
    lines.push(markedFinding(finding, catalogue, style), ...(todo === null ? [] : [`  -> ${todo}`]));
  }
  return `${lines.join('\n')}\n`.replaceAll('\u00a0', ' ');
}
