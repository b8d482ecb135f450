import { html, nothing, type TemplateResult } from 'lit';
import type { JobSheetOutput, SealOutcome } from '@seatwright/core/job';
import type { Finding } from '@seatwright/core/result';
import { bearingBlocks, editionText, type SheetBlock, type WritingStyle } from '@seatwright/core/wording';
import { decideLine, dueLine, putInLine, takeOutLine } from '../sheet/summaries.js';
import { words } from '../words/index.js';
import { sentences } from '../words/sentences.js';
import { renderBlock } from './block.js';
import { documentOf } from './document-of.js';
import { renderTable } from './print-sheet.js';
import { besideBlock } from './beside-block.js';
import { chartsBlock } from './charts-block.js';
import { driversBlock } from './drivers-block.js';
import { shelfBlock } from './shelf-block.js';
import type { SheetContext } from './sheet-context.js';

/** Stands where a plan would stand; why is said among the findings. */
const notComputed = () => html`<p>${words.notComputed}</p>`;

/** Does it suit: the findings, the sizes behind them, and the working when asked for. */
export function decideBlock(context: SheetContext, working: TemplateResult | typeof nothing): TemplateResult {
  const { output, style, isStale } = context;
  if (output === null) return renderBlock({ id: 'decide', heading: words.blocks.decide, line: words.noResult, isOpen: false, content: nothing });
  const ofParts = partsOfFindings(context, output);
  return renderBlock({
    id: 'decide',
    heading: words.blocks.decide,
    line: decideLine(output),
    isOpen: true,
    isStale,
    content: html`${ofParts.map(({ name, findings }) => html`${name === '' ? nothing : html`<h3>${name}</h3>`}<seat-findings .findings=${findings} .writing=${style}></seat-findings>`)}
      ${context.seal === null ? nothing : html`<h3>${words.sizes}</h3>`}
      ${sizeTables(context).map(renderTable)}
      ${bearingTables(context)}
      ${chartsBlock(context)}
      ${besideBlock(context)}
      ${shelfBlock(context)}
      ${working}`,
  });
}

/** What is to be said of the one seal and all the rest together; of several seals under the name of each. */
function partsOfFindings(context: SheetContext, output: JobSheetOutput): readonly { readonly name: string; readonly findings: readonly Finding[] }[] {
  if (!hasSeveralSeals(output)) return [{ name: '', findings: context.same('all findings', [...output.parts.flatMap((part) => part.findings), ...output.fileFindings]) }];
  const parts = output.parts.map(({ name, findings }) => ({ name, findings }));
  return context.same('findings of parts', output.fileFindings.length === 0 ? parts : [...parts, { name: words.ofTheSheet, findings: output.fileFindings }]);
}

/** Several seals are one piece of work, in one order; one seal is shown by itself. */
function hasSeveralSeals({ parts }: JobSheetOutput): boolean {
  return parts.filter(({ kind }) => kind === 'seal').length > 1;
}

/** How the old one comes out. */
export function takeOutBlock(context: SheetContext): TemplateResult {
  const { output, seal, style, isStale, actions } = context;
  if (output === null) return renderBlock({ id: 'take-out', heading: words.blocks.out, line: words.noResult, isOpen: false, content: nothing });
  if (seal === null) return renderBlock({ id: 'take-out', heading: words.blocks.out, line: bearingNames(output), isOpen: false, isStale, opened: () => { actions.showMode('bearing out'); }, content: bearingPlanOrWhy(output, 'removal', style) });
  return renderBlock({
    id: 'take-out',
    heading: words.blocks.out,
    line: takeOutLine(seal, style),
    isOpen: false,
    isStale,
    opened: () => { actions.showMode('taking out'); },
    content: seal.extraction === null ? notComputed() : html`${nameAmongSeveral(seal, output)}<seat-findings .findings=${seal.extraction.findings} .writing=${style}></seat-findings>
      ${hasSeveralSeals(output)
        ? html`<h3>${words.inThisOrder}</h3><seat-plan .steps=${output.blocks.takeOut} .writing=${style}></seat-plan>${bearingFindings(output, 'removal', style)}`
        : html`<seat-plan .steps=${seal.extraction.steps} .writing=${style}></seat-plan>${bearingPlan(output, 'removal', style)}`}`,
  });
}

/** What drives the new one in, and where it ends. */
export function putInBlock(context: SheetContext): TemplateResult {
  const { output, seal, style, isStale, driver, actions } = context;
  if (output === null) return renderBlock({ id: 'put-in', heading: words.blocks.in, line: words.noResult, isOpen: false, content: nothing });
  if (seal === null) return renderBlock({ id: 'put-in', heading: words.blocks.in, line: bearingNames(output), isOpen: false, isStale, opened: () => { actions.showMode('bearing in'); }, content: html`${bearingPlanOrWhy(output, 'fitting', style)}${bearingDrivers(context)}` });
  const findings = context.same('seating findings', [...(seal.driver?.findings ?? []), ...(seal.seating?.findings ?? []).filter((finding) => !seal.findings.includes(finding))]);
  return renderBlock({
    id: 'put-in',
    heading: words.blocks.in,
    line: putInLine(seal, driver?.name ?? '', style),
    isOpen: false,
    isStale,
    opened: () => { actions.showMode('as driven'); },
    content: html`${hasSeveralSeals(output) ? bearingFindings(output, 'fitting', style) : bearingPlan(output, 'fitting', style)}${bearingDrivers(context)}${nameAmongSeveral(seal, output)}<h3>${words.driver}</h3>
      ${seal.driver === null ? notComputed() : html`<seat-driver-choices .search=${seal.driver} chosen=${driver?.name ?? ''} .writing=${style} @seat-driver=${(event: CustomEvent<{ readonly name: string }>) => { actions.chooseDriver(event.detail.name); }}></seat-driver-choices>`}
      ${driversBlock({ search: seal.driver, situation: seal.situation, context, drawn: driver?.name ?? '', draw: (name) => { actions.chooseDriver(name); } })}
      <h3>${words.seating}</h3>
      ${findings.length === 0 ? nothing : html`<seat-findings .findings=${findings} .writing=${style}></seat-findings>`}
      ${hasSeveralSeals(output) ? html`<h3>${words.inThisOrder}</h3><seat-plan .steps=${output.blocks.putIn} .writing=${style}></seat-plan>` : seal.seating === null ? notComputed() : html`<seat-plan .steps=${seal.seating.steps} .writing=${style}></seat-plan>`}`,
  });
}

/** The last look, what is written down, and when it is due again. */
export function proveBlock({ output, style, isStale }: SheetContext): TemplateResult {
  if (output === null) return renderBlock({ id: 'prove', heading: words.blocks.prove, line: words.noResult, isOpen: false, content: nothing });
  const document = documentOf(output, style);
  const due = document.findIndex((block) => block.kind === 'heading' && block.text === sentences.labels['due']);
  const dueText = document[due + 1];
  const blanks = document.find((block) => block.kind === 'blanks');
  return renderBlock({
    id: 'prove',
    heading: words.blocks.prove,
    line: dueLine(output, style),
    isOpen: false,
    isStale,
    content: html`<seat-plan .steps=${output.blocks.prove} .writing=${style}></seat-plan>
      <h3>${words.dueAgain}</h3>
      <p>${dueText?.kind === 'paragraph' ? dueText.text : ''}</p>
      <h3>${words.sign}</h3>
      <ul class="to-fill">${blanks?.kind === 'blanks' ? blanks.rows.map(({ label }) => html`<li>${label}</li>`) : nothing}</ul>`,
  });
}

/** What was taken for granted, what was not looked at, and where the numbers come from. */
export function smallPrint({ output, style }: SheetContext): TemplateResult | typeof nothing {
  if (output === null) return nothing;
  const document = documentOf(output, style);
  const sections = ['assumed', 'notChecked', 'sources'].flatMap((label) => {
    const at = document.findIndex((block) => block.kind === 'heading' && block.text === sentences.labels[label]);
    const list = document[at + 1];
    return at < 0 || list?.kind !== 'list' ? [] : [{ heading: sentences.labels[label] ?? label, items: list.items }];
  });
  return html`<section class="small-print" aria-label=${words.blocks.small}>
    ${sections.map(({ heading, items }) => html`<h2>${heading}</h2><ul>${items.map(({ text }) => html`<li>${text}</li>`)}</ul>`)}
    <p>${sentences.labels['advises'] ?? ''} ${editionText(output, sentences)}</p>
  </section>`;
}

/** Out or in with the bearings, each under its name; before the seals go in, after they came out. */
function bearingPlan(output: JobSheetOutput, which: 'removal' | 'fitting', style: WritingStyle): TemplateResult | typeof nothing {
  const plans = output.parts.flatMap((part) => (part.kind === 'bearing' && part[which] !== null ? [{ name: part.name, plan: part[which] }] : []));
  return plans.length === 0 ? nothing : html`${plans.map(({ name, plan }) => html`<h3>${name}</h3><seat-findings .findings=${plan.findings} .writing=${style}></seat-findings><seat-plan .steps=${plan.steps} .writing=${style}></seat-plan>`)}`;
}

/** On a sheet of bearings alone, where a plan may be left open. */
function bearingPlanOrWhy(output: JobSheetOutput, which: 'removal' | 'fitting', style: WritingStyle): TemplateResult {
  const plan = bearingPlan(output, which, style);
  return plan === nothing ? notComputed() : plan;
}

/** What pushes the bearing, two of it side by side. */
function bearingDrivers(context: SheetContext): TemplateResult | typeof nothing {
  const { bearingOutcome, bearingDriver, actions } = context;
  return driversBlock({ search: bearingOutcome?.driver ?? null, situation: bearingOutcome?.situation, context, drawn: bearingDriver?.name ?? '', draw: (name) => { actions.chooseBearingDriver(name); } });
}

function bearingFindings(output: JobSheetOutput, which: 'removal' | 'fitting', style: WritingStyle): TemplateResult {
  return html`${output.parts.flatMap((part) => (part.kind === 'bearing' && part[which] !== null ? [html`<h3>${part.name}</h3><seat-findings .findings=${part[which].findings} .writing=${style}></seat-findings>`] : []))}`;
}

function nameAmongSeveral({ name }: SealOutcome, output: JobSheetOutput): TemplateResult | typeof nothing {
  return hasSeveralSeals(output) ? html`<h3>${name}</h3>` : nothing;
}

function bearingNames(output: JobSheetOutput): string {
  return output.parts.flatMap((part) => (part.kind === 'bearing' ? [part.name] : [])).join(', ');
}

/** Both seats and the clearance of each bearing, and what drives it in. */
function bearingTables({ output, style }: SheetContext): TemplateResult | typeof nothing {
  if (output === null) return nothing;
  const bearings = output.parts.filter((part) => part.kind === 'bearing').filter(({ seat, driver }) => seat !== null || driver !== null);
  return bearings.length === 0 ? nothing : html`${bearings.flatMap((part) => bearingBlocks(part, sentences, style)).map((block) => (block.kind === 'heading' ? html`<h3>${block.text}</h3>` : block.kind === 'table' ? renderTable(block) : block.kind === 'paragraph' ? html`<p>${block.text}</p>` : nothing))}`;
}

/** Of the seal that is looked at. */
function sizeTables({ output, seal, style }: SheetContext): readonly Extract<SheetBlock, { kind: 'table' }>[] {
  if (output === null || seal === null) return [];
  const document = documentOf(output, style);
  const heading = `${sentences.labels['sizes'] ?? ''}${hasSeveralSeals(output) ? `: ${seal.name}` : ''}`;
  const begin = document.findIndex((block) => block.kind === 'heading' && block.text === heading);
  const end = document.findIndex((block, i) => i > begin && block.kind === 'heading');
  return begin < 0 ? [] : document.slice(begin, end).filter((block) => block.kind === 'table');
}
