import { html, nothing, type TemplateResult } from 'lit';
import { english, jobSheetDocument, type SheetBlock, type SheetItem } from '@seatwright/core/wording';
import { words } from '../words.js';
import type { SheetContext } from './sheet-context.js';

const signs: Readonly<Record<SheetItem['tone'], string>> = { good: '✓', note: 'i', care: '!', unknown: '?', bad: '✗', plain: '' };

/** The same sheet for paper: everything open, two columns, black on white. In sight only while printing. */
export function printSheet(context: SheetContext): TemplateResult | typeof nothing {
  const { output, style, seal, driver, isStale } = context;
  if (output === null) return nothing;
  const document = jobSheetDocument(output, english, style);
  const title = document.find((block) => block.kind === 'title');
  const rest = document.filter((block) => block.kind !== 'title' && block.kind !== 'verdict');
  const small = rest.findIndex((block) => block.kind === 'heading' && (block.text === english.labels['assumed'] || block.text === english.labels['notChecked'] || block.text === english.labels['sources']));
  const end = small < 0 ? rest.length : small;
  return html`<div class="print-sheet" aria-hidden="true">
    <header>
      <h1>${title?.kind === 'title' ? title.text : ''}</h1>
      <p>${title?.kind === 'title' ? title.under : ''}</p>
    </header>
    <div class="head">
      <seat-section without-table draw-width="470" .situation=${context.situation} .check=${seal?.check ?? null} .extraction=${seal?.extraction ?? null} .seating=${seal?.seating ?? null} .driver=${driver} length-unit=${style.lengthUnit} decimal-mark=${style.decimalMark}></seat-section>
      <seat-verdict .verdict=${output.verdict} .findings=${output.parts.flatMap((part) => part.findings)} .nextReading=${output.nextReading} ?stale=${isStale} .writing=${style}></seat-verdict>
    </div>
    <div class="columns">${inSections(rest.slice(0, end)).map((section) => html`<section>${section.map(renderBlockOnPaper)}</section>`)}</div>
    <div class="columns fine">${rest.slice(end).map(renderBlockOnPaper)}</div>
    <p class="name">${words.name}</p>
  </div>`;
}

/** Each heading with what follows it. */
function inSections(blocks: readonly SheetBlock[]): readonly (readonly SheetBlock[])[] {
  const sections: SheetBlock[][] = [];
  for (const block of blocks) {
    if (block.kind === 'heading' || sections.length === 0) sections.push([]);
    sections.at(-1)?.push(block);
  }
  return sections;
}

function renderBlockOnPaper(block: SheetBlock): TemplateResult | typeof nothing {
  switch (block.kind) {
    case 'title':
    case 'verdict':
      return nothing;
    case 'heading':
      return html`<h2>${block.text}</h2>`;
    case 'paragraph':
      return html`<p>${block.text}</p>`;
    case 'list':
      return block.isNumbered ? html`<ol>${block.items.map(renderItem)}</ol>` : html`<ul>${block.items.map(renderItem)}</ul>`;
    case 'table':
      return renderTable(block);
    case 'blanks':
      return html`<dl class="blanks">${block.rows.map(({ label, count }) => html`<dt>${label}</dt><dd>${Array.from({ length: count }, () => html`<span></span>`)}</dd>`)}</dl>`;
  }
}

function renderItem({ text, tone, below }: SheetItem): TemplateResult {
  return html`<li class=${tone}>${signs[tone] === '' ? nothing : html`<b class="sign">${signs[tone]}</b> `}${text}${below.map((line) => html`<span class=${line.kind}>${line.kind === 'todo' ? '→ ' : line.kind === 'caution' ? '⚠ ' : ''}${line.text}</span>`)}</li>`;
}

/** A table of the sheet; its first column names the rows. */
export function renderTable({ columns, rows }: Extract<SheetBlock, { kind: 'table' }>): TemplateResult {
  const hasHeads = columns.some((column) => column !== '');
  return html`<div class="table"><table>
    ${hasHeads ? html`<thead><tr>${columns.map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>` : nothing}
    <tbody>${rows.map(([first = '', ...others]) => html`<tr><th scope="row">${first}</th>${others.map((cell, i) => html`<td data-label=${columns[i + 1] ?? ''}>${cell}</td>`)}</tr>`)}</tbody>
  </table></div>`;
}
