import type { SourceReference, WorkingStep } from '@seatwright/core/result';

/** The working as plain text, a step a paragraph: to be checked elsewhere, with every digit. */
export function workingAsText(steps: readonly WorkingStep[], word: (text: string) => string, sourceText: (source: SourceReference) => string): string {
  return steps
    .map((step) => {
      const unit = step.unit === '' ? '' : ` ${step.unit}`;
      const how = step.kind === 'formula' ? [`  = ${step.formula}`, ...(Object.keys(step.scope).length === 0 ? [] : [`  ${Object.entries(step.scope).map(([name, value]) => `${name} = ${value}`).join(', ')}`])] : step.kind === 'lookup' ? [`  ${step.table}, ${step.row}, ${step.column}`] : [`  ${word(step.why)}`];
      return [`${step.symbol} = ${step.value}${unit}   (${word(step.meaning)})`, ...how, `  ${sourceText(step.source)}`].join('\n');
    })
    .join('\n\n');
}
