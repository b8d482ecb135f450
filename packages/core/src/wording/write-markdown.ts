import type { SheetBlock, SheetDocument, SheetItem, Tone } from './sheet-document.js';

const signs: Readonly<Record<Tone, string>> = { good: '✓ ', note: 'ℹ ', care: '⚠ ', unknown: '? ', bad: '✗ ', plain: '' };

/**
 * A sheet as Markdown. Markup in names is escaped.
 * @example writeMarkdown([{ kind: 'heading', text: 'Sizes' }]).trim() // '## Sizes'
 */
export function writeMarkdown(document: SheetDocument): string {
  return `${document.map(blockMarkdown).join('\n\n').trimEnd()}\n`;
}

function blockMarkdown(block: SheetBlock): string {
  switch (block.kind) {
    case 'title':
      return `# ${escaped(block.text)}${block.under === '' ? '' : `\n\n${escaped(block.under)}`}`;
    case 'verdict':
      return [`> **${escaped(block.word).toUpperCase()}**`, ...block.because.map((reason) => `> - ${escaped(reason)}`), ...(block.next === null ? [] : [`> - ${escaped(block.next)}`])].join('\n');
    case 'heading':
      return `## ${escaped(block.text)}`;
    case 'paragraph':
      return escaped(block.text);
    case 'list':
      return block.items.map((item, i) => itemMarkdown(item, block.isNumbered ? `${i + 1}. ` : '- ')).join('\n');
    case 'table':
      return [row(block.columns), row(block.columns.map(() => '---')), ...block.rows.map((cells) => row(cells.map(escaped)))].join('\n');
    case 'blanks':
      return block.rows.map(({ label, count }) => `${escaped(label)}: ${Array.from({ length: count }, () => '\\_\\_\\_\\_\\_\\_').join(' ')}  `).join('\n');
  }
}

function itemMarkdown(item: SheetItem, head: string): string {
  const indent = ' '.repeat(head.length);
  return [
    `${head}${signs[item.tone]}${escaped(item.text)}`,
    ...item.below.map(({ kind, text }) => `${indent}- ${kind === 'caution' ? '**⚠ ' : ''}${escaped(text)}${kind === 'caution' ? '**' : ''}`),
  ].join('\n');
}

function row(cells: readonly string[]): string {
  return `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
}

function escaped(text: string): string {
  return text.replace(/[\\`*_<>#[\]]/g, (sign) => `\\${sign}`);
}
