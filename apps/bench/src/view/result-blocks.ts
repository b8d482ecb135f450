import { html, nothing, type TemplateResult } from 'lit';
import { english, jobSheetDocument, type SheetBlock } from '@seatwright/core/wording';
import { decideLine, dueLine, putInLine, takeOutLine } from '../sheet/summaries.js';
import { words } from '../words.js';
import { renderBlock } from './block.js';
import { renderTable } from './print-sheet.js';
import type { SheetContext } from './sheet-context.js';

/** Stands where a plan would stand; why is said among the findings. */
const notComputed = html`<p>${words.notComputed}</p>`;

/** Does it suit: the findings, the sizes behind them, and the working when asked for. */
export function decideBlock(context: SheetContext, working: TemplateResult | typeof nothing): TemplateResult {
  const { output, style, isStale } = context;
  if (output === null) return renderBlock({ id: 'decide', heading: words.blocks.decide, line: words.noResult, isOpen: false, content: nothing });
  const findings = [...output.parts.flatMap((part) => part.findings), ...output.fileFindings];
  return renderBlock({
    id: 'decide',
    heading: words.blocks.decide,
    line: decideLine(output),
    isOpen: true,
    isStale,
    content: html`<seat-findings .findings=${findings} .writing=${style}></seat-findings>
      <h3>${words.sizes}</h3>
      ${sizeTables(context).map(renderTable)}
      ${working}`,
  });
}

/** How the old one comes out. */
export function takeOutBlock(context: SheetContext): TemplateResult {
  const { output, seal, style, isStale, actions } = context;
  if (output === null || seal === null) return renderBlock({ id: 'take-out', heading: words.blocks.out, line: words.noResult, isOpen: false, content: nothing });
  return renderBlock({
    id: 'take-out',
    heading: words.blocks.out,
    line: takeOutLine(seal, style),
    isOpen: false,
    isStale,
    opened: () => { actions.showMode('taking out'); },
    content: seal.extraction === null ? notComputed : html`<seat-findings .findings=${seal.extraction.findings} .writing=${style}></seat-findings>
      <seat-plan .steps=${seal.extraction.steps} .writing=${style}></seat-plan>`,
  });
}

/** What drives the new one in, and where it ends. */
export function putInBlock(context: SheetContext): TemplateResult {
  const { output, seal, style, isStale, driver, actions } = context;
  if (output === null || seal === null) return renderBlock({ id: 'put-in', heading: words.blocks.in, line: words.noResult, isOpen: false, content: nothing });
  const findings = [...(seal.driver?.findings ?? []), ...(seal.seating?.findings ?? []).filter((finding) => !seal.findings.includes(finding))];
  return renderBlock({
    id: 'put-in',
    heading: words.blocks.in,
    line: putInLine(seal, driver?.name ?? '', style),
    isOpen: false,
    isStale,
    opened: () => { actions.showMode('as driven'); },
    content: html`<h3>${words.driver}</h3>
      ${seal.driver === null ? notComputed : html`<seat-driver-choices .search=${seal.driver} chosen=${driver?.name ?? ''} .writing=${style} @seat-driver=${(event: CustomEvent<{ readonly name: string }>) => { actions.chooseDriver(event.detail.name); }}></seat-driver-choices>`}
      <h3>${words.seating}</h3>
      ${findings.length === 0 ? nothing : html`<seat-findings .findings=${findings} .writing=${style}></seat-findings>`}
      ${seal.seating === null ? notComputed : html`<seat-plan .steps=${seal.seating.steps} .writing=${style}></seat-plan>`}`,
  });
}

/** The last look, what is written down, and when it is due again. */
export function proveBlock({ output, style, isStale }: SheetContext): TemplateResult {
  if (output === null) return renderBlock({ id: 'prove', heading: words.blocks.prove, line: words.noResult, isOpen: false, content: nothing });
  const document = jobSheetDocument(output, english, style);
  const due = document.findIndex((block) => block.kind === 'heading' && block.text === english.labels['due']);
  const dueText = document[due + 1];
  const blanks = document.find((block) => block.kind === 'blanks');
  return renderBlock({
    id: 'prove',
    heading: words.blocks.prove,
    line: dueLine(output, style),
    isOpen: false,
    isStale,
    content: html`<seat-plan .steps=${output.blocks.prove} .writing=${style}></seat-plan>
      <h3>${words.due}</h3>
      <p>${dueText?.kind === 'paragraph' ? dueText.text : ''}</p>
      <h3>${words.sign}</h3>
      <ul class="to-fill">${blanks?.kind === 'blanks' ? blanks.rows.map(({ label }) => html`<li>${label}</li>`) : nothing}</ul>`,
  });
}

/** What was taken for granted, what was not looked at, and where the numbers come from. */
export function smallPrint({ output, style }: SheetContext): TemplateResult | typeof nothing {
  if (output === null) return nothing;
  const document = jobSheetDocument(output, english, style);
  const sections = ['assumed', 'notChecked', 'sources'].flatMap((label) => {
    const at = document.findIndex((block) => block.kind === 'heading' && block.text === english.labels[label]);
    const list = document[at + 1];
    return at < 0 || list?.kind !== 'list' ? [] : [{ heading: english.labels[label] ?? label, items: list.items }];
  });
  return html`<section class="small-print" aria-label=${words.blocks.small}>
    ${sections.map(({ heading, items }) => html`<h2>${heading}</h2><ul>${items.map(({ text }) => html`<li>${text}</li>`)}</ul>`)}
    <p>${english.labels['advises'] ?? ''}</p>
  </section>`;
}

function sizeTables({ output, style }: SheetContext): readonly Extract<SheetBlock, { kind: 'table' }>[] {
  if (output === null) return [];
  const document = jobSheetDocument(output, english, style);
  const end = document.findIndex((block) => block.kind === 'heading' && block.text.startsWith(english.labels['findings'] ?? ''));
  return document.slice(0, end).filter((block) => block.kind === 'table');
}
