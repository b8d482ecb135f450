import { html, nothing, type TemplateResult } from 'lit';
import type { JobSheetOutput } from '@seatwright/core/job';
import { heldMark, sourceName, type SheetBlock, type SheetItem } from '@seatwright/core/wording';
import { words } from '../words/index.js';
import { documentOf } from './document-of.js';
import { sentences } from '../words/sentences.js';
import { sectionView } from './section-view.js';
import type { SheetContext } from './sheet-context.js';

const signs: Readonly<Record<SheetItem['tone'], string>> = { good: '✓', note: 'i', care: '!', unknown: '?', bad: '✗', plain: '' };

/** Drivers that find room on paper; the first ones are the best. */
const shownRows = 2;

/**
 * Letters below the drawings that a page of A4 or Letter holds as it is, and with smaller drawings; of a bearing alone fewer, since it has four
 * of them. Measured on the samples in both languages.
 */
const onePage = { seal: { plain: 10_500, tight: 10_750 }, bearing: { plain: 7_850, tight: 10_300 } } as const;
/** Letters that two pages hold; a longer sheet is set as it is. */
const twoPages = 20_000;
/** The smallest type that one page is worth, and the largest that is read any better. */
const zoomSpan = { least: 0.92, most: 1.25 } as const;

interface Setting {
  readonly name: '' | 'tight' | 'roomy';
  readonly zoom: number;
}

/** How a sheet is set: as large as its page holds it, on two pages where one would take smaller type than anybody reads. */
function settingOf(letters: number, { plain, tight }: (typeof onePage)['seal' | 'bearing']): Setting {
  // What is set larger by a tenth takes a fifth more room.
  const zoomIn = (held: number) => Math.min(Math.floor(100 * Math.sqrt(held / letters)) / 100, zoomSpan.most);
  if (letters <= plain) return { name: '', zoom: zoomIn(plain) };
  if (zoomIn(tight) >= zoomSpan.least) return { name: 'tight', zoom: Math.min(zoomIn(tight), 1) };
  return letters <= twoPages ? { name: 'roomy', zoom: zoomIn(twoPages) } : { name: '', zoom: 1 };
}

/** The same sheet for paper: everything open, three columns, black on white. In sight only while printing. */
export function printSheet(context: SheetContext): TemplateResult | typeof nothing {
  const { output, style, bearing, isStale } = context;
  const isBearingAlone = bearing !== null && context.sealParts.length === 0;
  if (output === null) return nothing;
  const document = documentOf(output, style);
  const title = document.find((block) => block.kind === 'title');
  const rest = document.filter((block) => block.kind !== 'title' && block.kind !== 'verdict');
  const small = rest.findIndex((block) => block.kind === 'heading' && (block.text === sentences.labels['assumed'] || block.text === sentences.labels['notChecked'] || block.text === sentences.labels['sources']));
  const end = small < 0 ? rest.length : small;
  const sections = inSections(withShortRepeats(rest.slice(0, end)));
  const isHeaded = (label: string) => (section: readonly SheetBlock[]) => section[0]?.kind === 'heading' && section[0].text.startsWith(sentences.labels[label] ?? label);
  const isOneSeal = output.parts.filter((part) => part.kind === 'seal').length === 1;
  const beside = isOneSeal ? sections.filter(isHeaded('sizes')) : [];
  const signing = sections.filter(isHeaded('due'));
  const blanks = sections.flat().filter((block) => block.kind === 'blanks');
  const work = sections.filter((section) => !beside.includes(section) && !signing.includes(section)).map((section) => section.filter((block) => block.kind !== 'blanks'));
  const inOrder = work.flat().flatMap((block) => (block.kind === 'list' && !block.isNumbered && !block.isSmall ? block.items.filter(({ tone }) => tone === 'good') : []));
  const fine = byHowHeld(rest.slice(end), output.sources);
  const hasBearingWork = !isBearingAlone && (context.bearingOutcome?.seat ?? context.bearingDriver) != null;
  const setting = settingOf(lettersOf([...work.flat(), ...fine]), onePage[isBearingAlone ? 'bearing' : 'seal']);
  return html`<div class="print-sheet ${setting.name}" aria-hidden="true">
    <header>
      <h1>${title?.kind === 'title' ? title.text : ''}</h1>
      <p>${title?.kind === 'title' ? title.under : ''}</p>
    </header>
    <div class="head">
      <div>
        ${isOneSeal || context.seal === null ? nothing : html`<p><strong>${context.seal.name}</strong></p>`}
        ${sectionView(context, { mode: isBearingAlone ? 'bearing in' : 'as driven', isOnPaper: true })}
        ${signing.flat().map(renderBlockOnPaper)}
      </div>
      <div>
        ${sectionView(context, { mode: isBearingAlone ? 'bearing out' : 'taking out', isOnPaper: true, withoutDetail: true })}
        ${hasBearingWork ? html`${sectionView(context, { mode: 'bearing in', isOnPaper: true, withoutDetail: true })}${sectionView(context, { mode: 'bearing out', isOnPaper: true, withoutDetail: true })}` : nothing}
        ${blanks.map(renderBlockOnPaper)}
      </div>
      <div>
        <seat-verdict .verdict=${output.verdict} .findings=${output.parts.flatMap((part) => part.findings)} .nextReading=${output.nextReading} ?stale=${isStale} .writing=${style}></seat-verdict>
        ${beside.flat().map(renderBlockOnPaper)}
      </div>
    </div>
    <div class="columns" .style=${`zoom: ${setting.zoom}`}>${work.map((section) => html`<section>${section.map(renderBlockOnPaper)}</section>`)}<section class="fine">${inOrder.length === 0 ? nothing : html`<h2>${words.checkedGood}</h2><p>${inOrder.map(({ text }) => text).join(' ')}</p>`}${fine.map(renderBlockOnPaper)}</section></div>
    <p class="name">${words.name}</p>
  </div>`;
}

function lettersOf(blocks: readonly SheetBlock[]): number {
  return blocks.flatMap((block) => {
    switch (block.kind) {
      case 'list':
        return block.items.flatMap(({ text, below }) => [text, ...below.map((line) => line.text)]);
      case 'table':
        return rowsOnPaper(block).flat();
      case 'blanks':
      case 'title':
      case 'verdict':
        return [];
      default:
        return [block.text];
    }
  }).join(' ').length;
}

/** Of the drivers only the best, and of what nearly served nothing. */
function rowsOnPaper({ columns, rows }: Extract<SheetBlock, { kind: 'table' }>): readonly (readonly string[])[] {
  if (columns[0] === sentences.labels['nearMiss']) return [];
  return columns[0] === sentences.labels['candidate'] ? rows.slice(0, shownRows) : rows;
}

/** A caution stands in full where it comes up first, and in its first sentence at each later step. */
function withShortRepeats(blocks: readonly SheetBlock[]): readonly SheetBlock[] {
  const said = new Set<string>();
  const once = (item: SheetItem): SheetItem => ({
    ...item,
    below: item.below.map((line) => {
      if (line.kind !== 'caution' || !said.has(line.text)) {
        said.add(line.text);
        return line;
      }
      return { ...line, text: /^.*?[.:](?=\s|$)/u.exec(line.text)?.[0].replace(/:$/u, '.') ?? line.text };
    }),
  });
  return blocks.map((block) => (block.kind === 'list' && block.isNumbered ? { ...block, items: block.items.map(once) } : block));
}

/** Assumptions and sources on paper, those held alike together: the mark stands once before them instead of in each. A standard is named by its designation alone. */
function byHowHeld(blocks: readonly SheetBlock[], sources: JobSheetOutput['sources']): readonly SheetBlock[] {
  const effect = new RegExp(`; ${sentences.labels['changes'] ?? ''} .*$`, 'u');
  const marks = ['memoryMark', 'practiceMark', 'computedMark', 'pageMark'].map((key) => sentences.labels[key] ?? key);
  return blocks.map((block, i) => {
    const heading = blocks[i - 1];
    const isMarked = heading?.kind === 'heading' && (heading.text === sentences.labels['sources'] || heading.text === sentences.labels['assumed']);
    if (!isMarked || block.kind !== 'list') return block;
    const groups = new Map<string, string[]>();
    for (const [at, { text: whole }] of block.items.entries()) {
      // What an assumption changes is told on the screen; paper names the value.
      const { id = '', designation = '' } = sources[at] ?? {};
      const text = heading.text === sentences.labels['assumed'] ? whole.replace(effect, '') : designation === '' ? whole : whole.replace(sourceName(id, sentences), designation);
      const held = marks.find((mark) => text.includes(heldMark(mark))) ?? '';
      groups.set(held, [...(groups.get(held) ?? []), (held === '' ? text : text.replace(heldMark(held), '')).replace(/\.$/u, '')]);
    }
    const items = [...groups].map(([held, texts]): SheetItem => ({ text: held === '' ? texts.join('; ') : `${held.charAt(0).toUpperCase()}${held.slice(1)}: ${texts.join('; ')}`, tone: 'plain', below: [] }));
    return { ...block, items };
  });
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
      if (block.isSmall) return html`<p>${block.items.map(({ text }) => text.replace(/\.$/u, '')).join(' · ')}</p>`;
      return block.isNumbered ? html`<ol>${block.items.map(renderItem)}</ol>` : unnumbered(block.items);
    case 'table':
      return rowsOnPaper(block).length === 0 ? nothing : renderTable({ ...block, rows: rowsOnPaper(block) });
    case 'blanks':
      return html`<dl class="blanks">${block.rows.map(({ label, count }) => html`<dt>${label}</dt><dd>${Array.from({ length: count }, () => html`<span></span>`)}</dd>`)}</dl>`;
  }
}

/** What asks for something, line by line; what is in order stands in the small print. */
function unnumbered(items: readonly SheetItem[]): TemplateResult | typeof nothing {
  const asking = items.filter(({ tone }) => tone !== 'good');
  return asking.length === 0 ? nothing : html`<ul>${asking.map(renderItem)}</ul>`;
}

/** One line with what to do about it; the cautions of a step stand together beside it. */
function renderItem({ text, tone, below }: SheetItem): TemplateResult {
  const cautions = below.filter(({ kind }) => kind === 'caution').map((line) => line.text);
  const others = below.filter(({ kind }) => kind !== 'caution');
  return html`<li class="tone-${tone}">${signs[tone] === '' ? nothing : html`<b class="sign">${signs[tone]}</b> `}${text}${others.map((line) => html`<span class=${line.kind}>${line.kind === 'todo' ? '→ ' : ''}${line.text}</span>`)}${cautions.length === 0 ? nothing : html`<span class="caution">⚠ ${cautions.join(' ')}</span>`}</li>`;
}

/** A table of the sheet; its first column names the rows. */
export function renderTable({ columns, rows }: Extract<SheetBlock, { kind: 'table' }>): TemplateResult {
  const hasHeads = columns.some((column) => column !== '');
  return html`<div class="table"><table>
    ${hasHeads ? html`<thead><tr>${columns.map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>` : nothing}
    <tbody>${rows.map(([first = '', ...others]) => html`<tr><th scope="row">${first}</th>${others.map((cell, i) => html`<td data-label=${columns[i + 1] ?? ''}>${cell}</td>`)}</tr>`)}</tbody>
  </table></div>`;
}
