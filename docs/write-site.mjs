// Writes the pages about the elements to docs/site/elements: each with its live example, its markup, and what the manifest says of it.
// TypeDoc writes docs/site/api beside it. Run `npm run docs`; open any page from a web server at the root of the repository.
import { cpSync, mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';

const at = (path) => new URL(path, import.meta.url);
const site = at('./site/elements/');
rmSync(site, { recursive: true, force: true });
mkdirSync(site, { recursive: true });
cpSync(at('../packages/elements/dist-single/seatwright.js'), new URL('seatwright.js', site));

const escape = (text) => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
const prose = (text = '') => escape(text).replaceAll(/`([^`]+)`/g, '<code>$1</code>');

const { modules } = JSON.parse(readFileSync(at('../packages/elements/custom-elements.json'), 'utf8'));
const elements = modules.flatMap(({ declarations = [] }) => declarations.filter(({ tagName }) => tagName !== undefined)).sort((a, b) => (a.tagName < b.tagName ? -1 : 1));

function table(caption, columns, rows) {
  if (rows.length === 0) return '';
  return `<h2>${caption}</h2>\n<div class="wide" tabindex="0" role="region" aria-label="${caption}"><table><thead><tr>${columns.map((column) => `<th scope="col">${column}</th>`).join('')}</tr></thead><tbody>\n${rows.map(([first, ...cells]) => `<tr><th scope="row"><code>${escape(first)}</code></th>${cells.map((cell) => `<td>${cell}</td>`).join('')}</tr>`).join('\n')}\n</tbody></table></div>`;
}

const code = (text) => (text === undefined ? '' : `<code>${escape(text)}</code>`);

function page(title, body, script = '') {
  return `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<meta name="color-scheme" content="light dark">
<title>${title}</title>
<link rel="icon" href="data:,">
<link rel="stylesheet" href="./page.css">
<main>
<h1>${title}</h1>
${body}
</main>
${script}
</html>
`;
}

for (const { tagName, description, attributes = [], members = [], events = [], cssParts = [] } of elements) {
  const example = readFileSync(at(`./elements/${tagName}.html`), 'utf8');
  const [markup = '', script = ''] = example.split(/\n(?=<script)/);
  const properties = members.filter(({ kind, static: isStatic, name }) => kind === 'field' && isStatic !== true && name !== 'reading');
  writeFileSync(
    new URL(`${tagName}.html`, site),
    page(
      `&lt;${tagName}&gt;`,
      `<p>${prose(description)}</p>
<section class="live" aria-label="Live example">
${markup}
</section>
<h2>The example as it is written</h2>
<pre tabindex="0"><code>${escape(example.trim())}</code></pre>
${table('Attributes', ['attribute', 'type', 'what it does'], attributes.map(({ name, type, description: text }) => [name, code(type?.text), prose(text)]))}
${table('Properties', ['property', 'type', 'what it holds'], properties.map(({ name, type, description: text }) => [name, code(type?.text), prose(text)]))}
${table('Events', ['event', 'what it tells'], events.filter(({ name }) => name !== undefined).map(({ name, description: text }) => [name, prose(text)]))}
${table('Parts to be styled', ['part', 'what it is'], cssParts.map(({ name, description: text }) => [name, prose(text)]))}
<p><a href="./index.html">All elements</a></p>`,
      script.replaceAll('@seatwright/elements/single.js', './seatwright.js'),
    ),
  );
}

writeFileSync(new URL('index.html', site), page('Elements', `<ul>\n${elements.map(({ tagName, description }) => `<li><a href="./${tagName}.html"><code>&lt;${tagName}&gt;</code></a> ${prose(description)}</li>`).join('\n')}\n</ul>`));
cpSync(at('./elements/page.css'), new URL('page.css', site));
const missing = readdirSync(at('./elements/')).filter((name) => name.endsWith('.html') && !elements.some(({ tagName }) => name === `${tagName}.html`));
if (missing.length > 0) throw new Error(`examples of no element: ${missing.join(', ')}`);
