import { spawnSync } from 'node:child_process';
import { createServer, type Server } from 'node:http';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';
import { chromium, type Browser, type Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { makeConsumer, root, type Consumer } from './internal/consumer.js';

const executablePath = process.env['CHROMIUM'] ?? '/usr/bin/chromium';
const types: Readonly<Record<string, string>> = { '.html': 'text/html; charset=utf-8', '.js': 'text/javascript', '.mjs': 'text/javascript', '.css': 'text/css', '.json': 'application/json' };

let consumer: Consumer;
let browser: Browser;
let server: Server;
let address = '';

beforeAll(async () => {
  if (!existsSync(executablePath)) throw new Error(`No Chromium at ${executablePath}. Install it ("apt-get install chromium" on Debian), or set CHROMIUM to the path of one.`);
  consumer = makeConsumer();
  server = createServer((request, answer) => {
    const file = join(consumer.folder, normalize(decodeURIComponent((request.url ?? '/').split('?')[0] ?? '/')));
    if (!file.startsWith(consumer.folder) || !existsSync(file)) return void answer.writeHead(404).end();
    answer.writeHead(200, { 'content-type': types[extname(file)] ?? 'application/octet-stream' }).end(readFileSync(file));
  });
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  address = `http://127.0.0.1:${(server.address() as AddressInfo).port}`;
  browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
}, 120_000);

afterAll(async () => {
  await browser.close();
  server.close();
});

/** Opens a page of the consumer; everything that went wrong on it is an error. */
async function open(path: string, look: (page: Page) => Promise<void>): Promise<void> {
  const page = await browser.newPage();
  const troubles: string[] = [];
  page.on('console', (message) => { if (message.type() === 'error') troubles.push(message.text()); });
  page.on('pageerror', (error) => troubles.push(error.message));
  page.on('request', (request) => { if (!request.url().startsWith(address)) troubles.push(`request to ${request.url()}`); });
  await page.goto(`${address}/${path}`);
  await look(page);
  expect(troubles.filter((text) => !text.includes('favicon') && !text.includes('404'))).toEqual([]);
  await page.close();
}

const situation = "{ bore: { diameterMm: 35, depthMm: 12, readings: [{ instrument: 'inside-micrometer-rod', valuesMm: [35.012, 35.015] }] }, shaft: { diameterMm: 20 }, seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }, seat: { kind: 'flush' } }";

/** What a page with the drawing shows once it stands. */
async function seesDrawing(page: Page): Promise<void> {
  await page.locator('seat-section svg').first().waitFor();
  await page.locator('seat-verdict .stamp').waitFor();
  expect((await page.locator('seat-verdict .stamp').innerText()).toLowerCase()).toContain('cannot tell');
}

test('a plain page without a bundler works with the one file', async () => {
  const folder = join(consumer.folder, 'plain');
  mkdirSync(folder);
  writeFileSync(join(folder, 'index.html'), `<!doctype html><html lang="en"><title>plain</title><seat-section></seat-section><seat-verdict></seat-verdict>
<script type="module">
import { findCalculation, tablesEdition } from '../node_modules/@seatwright/elements/dist-single/seatwright.js';
const situation = ${situation};
const check = findCalculation('seal-check').run(situation);
Object.assign(document.querySelector('seat-section'), { situation, check });
Object.assign(document.querySelector('seat-verdict'), { verdict: check.verdict, findings: check.findings });
document.title = tablesEdition;
</script></html>`);
  await open('plain/index.html', async (page) => {
    await seesDrawing(page);
    expect(await page.title()).toMatch(/^\d{4}\.\d\d-[0-9a-f]{8}$/);
  });
});

test('a page built by a bundler works with elements taken one by one, and brings no more than it uses', async () => {
  const folder = join(consumer.folder, 'bundled');
  mkdirSync(folder);
  writeFileSync(join(folder, 'index.html'), '<!doctype html><html lang="en"><title>bundled</title><seat-section></seat-section><seat-verdict></seat-verdict><script type="module" src="./main.js"></script></html>');
  writeFileSync(join(folder, 'main.js'), `import '@seatwright/elements/seat-section.define.js';
import '@seatwright/elements/seat-verdict.define.js';
import { sealCheck } from '@seatwright/core/seal';
const situation = ${situation};
const check = sealCheck.run(situation);
Object.assign(document.querySelector('seat-section'), { situation, check });
Object.assign(document.querySelector('seat-verdict'), { verdict: check.verdict, findings: check.findings });
`);
  const built = spawnSync(process.execPath, [join(root, 'node_modules/vite/bin/vite.js'), 'build', '--base', './', '--logLevel', 'error'], { cwd: folder, encoding: 'utf8' });
  expect(built.stderr).toBe('');
  expect(built.status).toBe(0);
  await open('bundled/dist/index.html', async (page) => {
    await seesDrawing(page);
    expect(await page.evaluate(() => [customElements.get('seat-section') !== undefined, customElements.get('seat-working') !== undefined])).toEqual([true, false]);
  });
}, 120_000);

test('the one file keeps its elements when a bundler takes it', async () => {
  const folder = join(consumer.folder, 'single');
  mkdirSync(folder);
  writeFileSync(join(folder, 'index.html'), '<!doctype html><html lang="en"><title>single</title><seat-plan></seat-plan><script type="module" src="./main.js"></script></html>');
  writeFileSync(join(folder, 'main.js'), "import '@seatwright/elements/single.js';\n");
  const built = spawnSync(process.execPath, [join(root, 'node_modules/vite/bin/vite.js'), 'build', '--base', './', '--logLevel', 'error'], { cwd: folder, encoding: 'utf8' });
  expect(built.stderr).toBe('');
  await open('single/dist/index.html', async (page) => {
    await page.waitForFunction(() => customElements.get('seat-plan') !== undefined);
  });
}, 120_000);

test('a worker in the browser computes with the packages', async () => {
  const folder = join(consumer.folder, 'worker');
  mkdirSync(folder);
  writeFileSync(join(folder, 'index.html'), '<!doctype html><html lang="en"><title>worker</title><output></output><script type="module" src="./main.js"></script></html>');
  writeFileSync(join(folder, 'main.js'), "const worker = new Worker(new URL('./worker.js', import.meta.url), { type: 'module' });\nworker.onmessage = ({ data }) => { document.querySelector('output').value = data.answers.length + ' ' + data.answers[0].toFixed(2); };\nworker.postMessage(Array.from({ length: 1000 }, (_, i) => ({ shaftDiameterMm: 20, speedRpm: 1000 + i })));\n");
  writeFileSync(join(folder, 'worker.js'), "import { lipSpeed } from '@seatwright/core/seal';\nself.onmessage = ({ data }) => self.postMessage({ answers: data.map((input) => lipSpeed.run(input).peripheralSpeedMps) });\n");
  const built = spawnSync(process.execPath, [join(root, 'node_modules/vite/bin/vite.js'), 'build', '--base', './', '--logLevel', 'error'], { cwd: folder, encoding: 'utf8' });
  expect(built.stderr).toBe('');
  await open('worker/dist/index.html', async (page) => {
    await page.waitForFunction(() => (document.querySelector('output')?.value ?? '') !== '');
    expect(await page.locator('output').innerText()).toBe('1000 1.05');
  });
}, 120_000);

test('the recipe of a field in a form is a working page', async () => {
  const [, page = ''] = /^```html\n([\s\S]*?)^```$/mu.exec(readFileSync(join(root, 'docs/cookbook/02-a-field-in-your-form.md'), 'utf8')) ?? [];
  mkdirSync(join(consumer.folder, 'form'));
  writeFileSync(join(consumer.folder, 'form/index.html'), `<!doctype html><html lang="en"><title>form</title>${page.replace('./seatwright.js', '../node_modules/@seatwright/elements/dist-single/seatwright.js')}</html>`);
  await open('form/index.html', async (opened) => {
    await opened.getByLabel('Bore as measured').fill('35,01 mm');
    await opened.waitForFunction(() => document.querySelector('form')?.dataset['boreMm'] === '35.01');
    expect(await opened.locator('output').innerText()).toBe('4711: 35,01 mm');
  });
});

test.each(['nodenext', 'bundler'])('a strict TypeScript consumer of the elements with module resolution %s compiles', (resolution) => {
  const folder = join(consumer.folder, `elements-${resolution}`);
  mkdirSync(folder);
  writeFileSync(join(folder, 'use.ts'), `import '@seatwright/elements/all.js';
import { SeatSection } from '@seatwright/elements/seat-section.js';
import { englishWords, type ElementWords } from '@seatwright/elements/words.js';
import { tablesEdition } from '@seatwright/elements/single.js';
import { sealCheck } from '@seatwright/core/seal';
const drawing: SeatSection = document.createElement('seat-section') as SeatSection;
drawing.check = sealCheck.run({});
export const words: ElementWords = englishWords;
export const edition: string = tablesEdition;
// @ts-expect-error a drawing is no number
drawing.situation = 5;
`);
  writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify({ compilerOptions: { target: 'es2022', module: resolution === 'bundler' ? 'esnext' : 'nodenext', moduleResolution: resolution, strict: true, noEmit: true, types: [], lib: ['es2022', 'dom', 'dom.iterable'], skipLibCheck: false }, files: ['use.ts'] }));
  const { stdout } = spawnSync(process.execPath, [join(root, 'node_modules/typescript/bin/tsc'), '-p', folder], { encoding: 'utf8' });
  expect(stdout).toBe('');
});
