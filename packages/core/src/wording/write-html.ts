import type { SheetBlock, SheetDocument, SheetItem, Tone } from './sheet-document.js';

const signs: Readonly<Record<Tone, string>> = { good: '✓', note: 'i', care: '!', unknown: '?', bad: '✗', plain: '' };

/**
 * A sheet as one HTML page, printable on A4 or Letter, without script. Everything that people typed is escaped.
 * @example writeHtml([{ kind: 'paragraph', text: 'In order.', isSmall: false }]).startsWith('<!doctype html>') // true
 */
export function writeHtml(document: SheetDocument, language = 'en'): string {
  const title = document.find((block) => block.kind === 'title')?.text ?? '';
  return `<!doctype html>
<html lang="${escaped(language)}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>${escaped(title)}</title>
<style>${style}</style></head><body>
${document.map(blockHtml).join('\n')}
</body></html>
`;
}

const style = `
body{font:11pt/1.35 system-ui,sans-serif;color:#14233a;background:#fff;max-width:46rem;margin:1.5rem auto;padding:0 1rem;font-variant-numeric:tabular-nums}
h1{font-size:1.4rem;margin:0}h2{font-size:1.05rem;margin:1.1rem 0 .3rem;border-bottom:1px solid currentColor}
.verdict{border:3px double currentColor;padding:.5rem .8rem;margin:.8rem 0}.verdict strong{font-size:1.3rem;text-transform:uppercase;letter-spacing:.04em}
ul,ol{margin:.2rem 0;padding-left:1.6rem}ul.signed{list-style:none;padding-left:0}ul.signed>li{padding-left:1.6rem;text-indent:-1.6rem}
.sign{display:inline-block;width:1.6rem;text-indent:0;font-weight:700;text-align:center}
.todo,.caution{text-indent:0;font-size:.93em}.caution{font-weight:600;border-left:3px solid currentColor;padding-left:.4rem;margin:.15rem 0}
.small{font-size:.85em}table{border-collapse:collapse;width:100%}th,td{text-align:left;padding:.15rem .5rem .15rem 0;vertical-align:top;border-bottom:1px solid #9aa6b5}
.blank{display:inline-block;min-width:4.5rem;border-bottom:1px solid currentColor;margin:.6rem .5rem 0 0}
@media print{body{margin:0;max-width:none;font-size:9.5pt}h2{break-after:avoid}li,tr,.verdict{break-inside:avoid}}`;

function blockHtml(block: SheetBlock): string {
  switch (block.kind) {
    case 'title':
      return `<h1>${escaped(block.text)}</h1>${block.under === '' ? '' : `<p>${escaped(block.under)}</p>`}`;
    case 'verdict':
      return `<div class="verdict"><strong>${escaped(block.word)}</strong><ul>${[...block.because, ...(block.next === null ? [] : [block.next])].map((text) => `<li>${escaped(text)}</li>`).join('')}</ul></div>`;
    case 'heading':
      return `<h2>${escaped(block.text)}</h2>`;
    case 'paragraph':
      return `<p${block.isSmall ? ' class="small"' : ''}>${escaped(block.text)}</p>`;
    case 'list': {
      const isSigned = !block.isNumbered && block.items.some((item) => item.tone !== 'plain');
      const tag = block.isNumbered ? 'ol' : 'ul';
      const classes = [isSigned ? 'signed' : '', block.isSmall ? 'small' : ''].filter((name) => name !== '').join(' ');
      return `<${tag}${classes === '' ? '' : ` class="${classes}"`}>${block.items.map((item) => itemHtml(item, isSigned)).join('')}</${tag}>`;
    }
    case 'table':
      return `<table><thead><tr>${block.columns.map((cell) => `<th scope="col">${escaped(cell)}</th>`).join('')}</tr></thead><tbody>${block.rows.map((cells) => `<tr>${cells.map((cell) => `<td>${escaped(cell)}</td>`).join('')}</tr>`).join('')}</tbody></table>`;
    case 'blanks':
      return block.rows.map(({ label, count }) => `<div>${escaped(label)}: ${'<span class="blank">&nbsp;</span>'.repeat(count)}</div>`).join('');
  }
}

function itemHtml(item: SheetItem, isSigned: boolean): string {
  const sign = isSigned ? `<span class="sign">${signs[item.tone]}</span>` : '';
  return `<li>${sign}${escaped(item.text)}${item.below.map(({ kind, text }) => `<div class="${kind}">${kind === 'caution' ? '⚠ ' : ''}${escaped(text)}</div>`).join('')}</li>`;
}

function escaped(text: string): string {
  return text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);
}
