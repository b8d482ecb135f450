import { fit, inchFit, isInchFitDesignation, parseFitDesignation, parseInchFitDesignation, parseZoneDesignation, toleranceZone } from '@seatwright/core/tolerance';
import { answerText, workingText } from '../internal/write-answer.js';
import { answerJson, stampLine } from '../internal/stamp.js';

interface Options {
  readonly explain?: boolean;
  readonly json?: boolean;
}

/** `25 p6` */
export function zone(designation: string, options: Options): Promise<void> {
  const input = toleranceZone.parse(parseZoneDesignation(designation));
  const output = toleranceZone.compute(input);
  show(toleranceZone, output, options.explain === true ? toleranceZone.explain(input, output) : undefined, options);
  return Promise.resolve();
}

/** `25 H7/p6`, or an inch fit: `3/4 FN2` */
export function fitOf(designation: string, options: Options): Promise<void> {
  if (isInchFitDesignation(designation)) {
    const input = inchFit.parse(parseInchFitDesignation(designation));
    const output = inchFit.compute(input);
    show(inchFit, output, options.explain === true ? inchFit.explain(input, output) : undefined, options);
    return Promise.resolve();
  }
  const input = fit.parse(parseFitDesignation(designation));
  const output = fit.compute(input);
  show(fit, output, options.explain === true ? fit.explain(input, output) : undefined, options);
  return Promise.resolve();
}

function show(calculation: Parameters<typeof answerText>[1], output: unknown, working: ReturnType<typeof fit.explain> | undefined, options: Options): void {
  if (options.json === true) process.stdout.write(`${answerJson(output, working)}\n`);
  else process.stdout.write(answerText(output, calculation) + (working === undefined ? '' : workingText(working)) + `\n${stampLine}`);
}
