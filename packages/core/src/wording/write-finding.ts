import type { Finding, PlanStep } from '../result/index.js';
import type { Catalogue } from './catalogue.js';
import { fill } from './fill.js';
import type { SheetItem } from './sheet-document.js';
import type { WritingStyle } from './write-value.js';

/**
 * A finding as sentence and advice. A code without words is shown as it is, never dropped.
 * @example writeFinding(deciding('bore-needs-no-repair', 'good', { boreMm: 35.02, boreUpToMm: 35.06 }, commonPractice), english, plainStyle).says // 'The bore (35.02 mm) keeps the hold that the standard lets happen: up to 35.06 mm.'
 */
export function writeFinding(finding: Finding, catalogue: Catalogue, style: WritingStyle): { readonly says: string; readonly todo: string | null } {
  const words = catalogue.findings[finding.code];
  if (words === undefined) return { says: finding.code, todo: null };
  return {
    says: fill(words.says, finding.parameters, catalogue, style),
    todo: words.todo === undefined ? null : fill(words.todo, finding.parameters, catalogue, style),
  };
}

/**
 * What a finding says, with a mark where it rests on memory.
 * @example markedFinding(deciding('bore-needs-no-repair', 'good', { boreMm: 35.02, boreUpToMm: 35.06 }, source('sen-1968', 'memory')), english, plainStyle).endsWith('[from memory (unverified)]') // true
 */
export function markedFinding(finding: Finding, catalogue: Catalogue, style: WritingStyle): string {
  const { says } = writeFinding(finding, catalogue, style);
  return finding.source.held === 'memory' ? `${says}${heldMark(catalogue.labels['memoryMark'] ?? 'memory')}` : says;
}

/**
 * A finding as a line of a sheet.
 * @example findingItem(deciding('bore-has-grown', 'care', { boreMm: 35.02, overUm: 12 }, commonPractice), english, plainStyle).tone // 'care'
 */
export function findingItem(finding: Finding, catalogue: Catalogue, style: WritingStyle): SheetItem {
  const { todo } = writeFinding(finding, catalogue, style);
  return { text: markedFinding(finding, catalogue, style), tone: finding.severity, below: todo === null ? [] : [{ kind: 'todo', text: todo }] };
}

/**
 * A step of work as a line of a sheet, its cautions below it.
 * @example stepItem(planStep('prove-turn-by-hand', {}, commonPractice, ['spinning-parts']), english, plainStyle).below[0].kind // 'caution'
 */
export function stepItem(step: PlanStep, catalogue: Catalogue, style: WritingStyle): SheetItem {
  const template = catalogue.steps[step.code] ?? step.code;
  return {
    text: fill(template, step.parameters, catalogue, style),
    tone: 'plain',
    below: step.cautions.map((code) => ({ kind: 'caution', text: fill(catalogue.cautions[code] ?? code, step.parameters, catalogue, style) })),
  };
}

/**
 * How a value or a source is held, as it stands behind it.
 * @example heldMark('computed here') // ' [computed here]'
 */
export function heldMark(mark: string): string {
  return ` [${mark}]`;
}
