import type { SheetBlock, SheetDocument, SheetItem, Tone } from './sheet-document.js';

const signs: Readonly<Record<Tone, string>> = { good: '[ok]', note: '[i] ', care: '[!] ', unknown: '[?] ', bad: '[X] ', plain: '' };

/**
 * A sheet as plain text, wrapped to a width; `caution` is what stands before a caution, in the language of the sheet.
 * @example writeText([{ kind: 'paragraph', text: 'In order.', isSmall: false }]).trim() // 'In order.'
 */
export function writeText(document: SheetDocument, width = 92, caution = 'Caution'): string {
  return `${document.map((block) => blockText(block, width, caution)).join('\n').replace(/\n{3,}/g, '\n\n').trimEnd()}\n`;
}

function blockText(block: SheetBlock, width: number, caution: string): string {
  switch (block.kind) {
    case 'title':
      return `${wrapped(block.text, width)}\n${block.under === '' ? '' : `${wrapped(block.under, width)}\n`}`;
    case 'verdict': {
      const bar = '='.repeat(Math.min(width, Math.max(24, block.word.length + 8)));
      const because = block.because.map((reason) => hung(reason, '  * ', '    ', width)).join('\n');
      const next = block.next === null ? '' : `\n${hung(block.next, '  > ', '    ', width)}`;
      return `${bar}\n    ${block.word.toUpperCase()}\n${bar}\n${because}${next}\n`;
    }
    case 'heading':
      return `\n${block.text.toUpperCase()}\n${'-'.repeat(block.text.toUpperCase().length)}`;
    case 'paragraph':
      return wrapped(block.text, width);
    case 'list':
      return block.items.map((item, i) => itemText(item, block.isNumbered ? `${String(i + 1).padStart(2)}. ` : '', width, caution)).join('\n');
    case 'table':
      return tableText(block.columns, block.rows, width);
    case 'blanks':
      return block.rows.map(({ label, count }) => `${label}: ${Array.from({ length: count }, () => '________').join('  ')}`).join('\n');
  }
}

function itemText(item: SheetItem, number: string, width: number, caution: string): string {
  const heads = { todo: '-> ', caution: `! ${caution.toUpperCase()}: `, source: '' } as const;
  const first = number !== '' ? number : item.tone === 'plain' ? '  - ' : `${signs[item.tone]} `;
  const indent = ' '.repeat(first.length);
  const lines = [hung(item.text, first, indent, width)];
  for (const { kind, text } of item.below) lines.push(hung(text, indent + heads[kind], `${indent}   `, width));
  return lines.join('\n');
}

function tableText(columns: readonly string[], rows: readonly (readonly string[])[], width: number): string {
  const widths = columns.map((column, c) => Math.max(column.length, ...rows.map((row) => (row[c] ?? '').length)));
  const others = widths.slice(0, -1).reduce((sum, w) => sum + w + 2, 0);
  const lastWidth = Math.max(20, width - others);
  const line = (cells: readonly string[]) => {
    const front = cells.slice(0, -1).map((cell, c) => cell.padEnd(widths[c] ?? 0)).join('  ');
    const [head = '', ...rest] = wrapped(cells.at(-1) ?? '', lastWidth).split('\n');
    return [`${front}${front === '' ? '' : '  '}${head}`.trimEnd(), ...rest.map((text) => ' '.repeat(others) + text)].join('\n');
  };
  const rule = widths.map((w, c) => '-'.repeat(c === widths.length - 1 ? Math.min(w, lastWidth) : w)).join('  ');
  return [line(columns), rule, ...rows.map(line), ''].join('\n');
}

function hung(text: string, first: string, rest: string, width: number): string {
  const lines = wrapped(text, Math.max(20, width - first.length)).split('\n');
  return lines.map((line, i) => (i === 0 ? first : rest) + line).join('\n');
}

/** Breaks at ordinary spaces only, so that a number stays with its unit. */
function wrapped(text: string, width: number): string {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/[ \n]+/)) {
    if (line !== '' && line.length + 1 + word.length > width) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  lines.push(line);
  return lines.join('\n');
}
