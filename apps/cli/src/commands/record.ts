import { appendChange, findPosition, readWorkshop, serviceRecord } from '@seatwright/core/job';
import { invalidInput } from '@seatwright/core';
import { english, plainStyle, markedFinding, writeFinding } from '@seatwright/core/wording';
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
  readonly json?: boolean;
}

/** The record of a position; with `--date` one renewal more is written to its end first. */
export async function record(file: string, options: Options): Promise<void> {
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
  show(after, options);
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

function show(workshop: unknown, options: Options): void {
  const output = serviceRecord.run({ workshop, ...placeIn(workshop, options), ...(options.asOf === undefined ? {} : { asOfDate: options.asOf }) });
  process.stdout.write(options.json === true ? `${answerJson(output)}\n` : `${textOf(output)}\n${stampLine}`);
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

function textOf(output: ReturnType<typeof serviceRecord.compute>): string {
  const lines = [`Record: ${output.machine}, ${output.position}`, ''];
  for (const { date, hourMeterHours, sinceBeforeHours, boreMm, shaftMm } of output.changes) {
    const about = [hourMeterHours === null ? null : `${hourMeterHours} h`, sinceBeforeHours === null ? null : `${sinceBeforeHours} h after the one before`, boreMm === null ? null : `bore ${rounded(boreMm)} mm`, shaftMm === null ? null : `shaft ${rounded(shaftMm)} mm`];
    lines.push(`  ${date}  ${about.filter((one) => one !== null).join(', ')}`);
  }
  if (output.changes.length > 0) lines.push('');
  if (output.lipTravelToDateKm !== null) lines.push(`Lip travel on record: ${Math.round(output.lipTravelToDateKm)} km.`);
  if (output.dueBy !== null) lines.push(`Due next: ${[output.dueAtHours === null ? null : `at ${rounded(output.dueAtHours)} h`, output.dueDate === null ? null : `by ${output.dueDate}`].filter((one) => one !== null).join(', ')} (${output.dueBy}).`);
  for (const finding of output.findings) {
    const { todo } = writeFinding(finding, english, plainStyle);
    lines.push(markedFinding(finding, english, plainStyle), ...(todo === null ? [] : [`  -> ${todo}`]));
  }
  return `${lines.join('\n')}\n`;
}

function rounded(value: number): number {
  return Math.round(value * 1000) / 1000;
}
