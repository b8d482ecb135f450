#!/usr/bin/env node
import { Command, CommanderError } from 'commander';
import { CalculationError } from '@seatwright/core';
import { stampLine } from './internal/stamp.js';
import { writingFault } from './internal/writing-fault.js';

/** Refused input ends with 1, what could not run with 2. */
function failWith(error: unknown, isJson: boolean): void {
  const refused = error instanceof CalculationError;
  const message = error instanceof Error ? error.message : String(error);
  if (isJson && refused) process.stdout.write(`${JSON.stringify({ ok: false, error: error.toJSON() })}\n`);
  process.stderr.write(`seatwright: ${message}\n`);
  process.exitCode = refused ? 1 : 2;
}

function guarded<A extends readonly unknown[]>(run: (...args: A) => Promise<void>): (...args: A) => Promise<void> {
  return async (...args) => {
    try {
      await run(...args);
    } catch (error) {
      failWith(error, args.some((arg) => typeof arg === 'object' && arg !== null && (arg as { json?: boolean }).json === true));
    }
  };
}

process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  // Whoever read it has gone, as `head` does: nothing is amiss.
  if (error.code === 'EPIPE') process.exit(process.exitCode ?? 0);
  process.stderr.write(`seatwright: the output could not be written: ${writingFault(error)}\n`);
  process.exit(2);
});

const program = new Command('seatwright')
  .description("Does this seal suit this shaft and bore, how does the old one come out, how does the new one go in, when next? It advises; it does not certify. The maker's manual, local rules and licensed practice come first.")
  .version(stampLine.trim())
  .addHelpText('after', '\nExit code: 0 answered, 1 the input was refused (batch: some lines failed), 2 could not run.')
  .exitOverride();

program
  .command('job')
  .argument('<file>', 'workshop file, or - for standard input')
  .description('the job sheet of a position in a workshop file')
  .option('--position <name>', 'name of the position')
  .option('--machine <name>', 'name of the machine')
  .option('--as-of <date>', 'day of the work, YYYY-MM-DD')
  .option('--format <form>', 'text, markdown or html', 'text')
  .option('--language <tag>', 'language of the sheet, en or de; JSON stays as it is', 'en')
  .option('--explain', 'add the working')
  .option('--json', 'the answer as JSON')
  .action(guarded(async (file: string, options: object) => (await import('./commands/job.js')).job(file, options)));
program
  .command('shelf')
  .argument('<list>', 'CSV file with one seal a line, or - for standard input')
  .requiredOption('--for <file>', 'workshop file with the position')
  .option('--position <name>', 'name of the position')
  .option('--machine <name>', 'name of the machine')
  .option('--part <name>', 'name or number of the seal, where a position has several')
  .option('--best <number>', 'how many to list', '10')
  .option('--unit <unit>', 'mm or in, for sizes without a unit', 'mm')
  .option('--column <role=header...>', 'which column is what, such as shaft=Di')
  .option('--language <tag>', 'language of the answer, en or de; JSON stays as it is', 'en')
  .option('--json', 'the answer as JSON')
  .description('which seals of a list suit a position, best first')
  .action(guarded(async (file: string, options: { for: string }) => (await import('./commands/shelf.js')).shelf(file, options)));
program
  .command('record')
  .argument('<file>', 'workshop file, or - for standard input')
  .option('--position <name>', 'name of the position')
  .option('--machine <name>', 'name of the machine')
  .option('--date <date>', 'writes a change of this day, YYYY-MM-DD, to the end of the record')
  .option('--hours <hours>', 'hour meter at the change')
  .option('--renewed <what>', 'seal, bearing, or "seal and bearing"', 'seal')
  .option('--bore <readings...>', 'readings of the bore')
  .option('--bore-with <instrument>', 'instrument of these readings')
  .option('--shaft <readings...>', 'readings of the shaft')
  .option('--shaft-with <instrument>', 'instrument of these readings')
  .option('--found <state>', 'the old seal as it was found: dry, damp or leaking')
  .option('--fitted <text>', 'what was fitted')
  .option('--old-depth <depths...>', 'depth of the old seal below the face')
  .option('--depth <depths...>', 'depth of the new seal below the face')
  .option('--note <text>', 'a note')
  .option('--out <file>', 'writes there instead, and leaves the file as it is')
  .option('--as-of <date>', 'day to count from, YYYY-MM-DD')
  .option('--language <tag>', 'language of the answer, en or de; JSON stays as it is', 'en')
  .option('--json', 'the answer as JSON')
  .description('the record of past renewals and the next due; with --date one more is written')
  .action(guarded(async (file: string, options: object) => (await import('./commands/record.js')).record(file, options)));
program
  .command('run')
  .argument('<name>', 'name of a calculation')
  .requiredOption('--input <file>', 'JSON file, or - for standard input')
  .description('one calculation')
  .option('--explain', 'add the working')
  .option('--json', 'the answer as JSON')
  .action(guarded(async (name: string, options: { input: string }) => (await import('./commands/run.js')).run(name, options)));
program
  .command('batch')
  .description('JSON Lines on standard input, one answer a line on standard output')
  .option('--jobs <number>', 'worker threads; the order of the lines is kept', '1')
  .action(guarded(async (options: { jobs: string }) => (await import('./commands/batch.js')).batch(process.stdin, process.stdout, options)));
program
  .command('zone')
  .argument('<designation...>', 'such as "25 p6"')
  .description('limits of an ISO 286 tolerance zone')
  .option('--explain', 'add the working')
  .option('--json', 'the answer as JSON')
  .action(guarded(async (words: string[], options: object) => (await import('./commands/zone.js')).zone(words.join(' '), options)));
program
  .command('fit')
  .argument('<designation...>', 'such as "25 H7/p6", "1 in H7/p6" or "3/4 FN2"')
  .description('clearance and interference of an ISO 286 or an ANSI B4.1 inch fit')
  .option('--explain', 'add the working')
  .option('--json', 'the answer as JSON')
  .action(guarded(async (words: string[], options: object) => (await import('./commands/zone.js')).fitOf(words.join(' '), options)));
program
  .command('schema')
  .argument('<name>', 'name of a calculation, or workshop-file')
  .description('JSON Schemas of input and output')
  .action(guarded(async (name: string) => (await import('./commands/schema.js')).schema(name)));
program
  .command('list')
  .description('the calculations')
  .option('--json', 'as JSON')
  .action(guarded(async (options: { json?: boolean }) => (await import('./commands/schema.js')).list(options)));

try {
  // A size below zero is a size, not an option.
  await program.parseAsync(process.argv.map((word) => (/^-[\d.,]/.test(word) ? ` ${word}` : word)));
} catch (error) {
  if (error instanceof CommanderError) process.exitCode = error.exitCode === 0 ? 0 : 2;
  else failWith(error, false);
}
