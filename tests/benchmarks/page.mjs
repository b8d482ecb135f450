// How the built page answers on a slow device: CPU slowed four times, tasks over 50 ms while somebody types, how soon the first screen can be used,
// and how long a key takes until what it changed is painted. Prints; asserts nothing. Needs Chromium (CHROMIUM=path) and `npm run build`.
import { createServer } from 'node:http';
import { existsSync, readFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import { chromium } from 'playwright-core';

const slowed = 4;
const root = new URL('../../apps/bench/dist/', import.meta.url).pathname;
const types = { '.html': 'text/html; charset=utf-8', '.js': 'text/javascript', '.css': 'text/css', '.json': 'application/json', '.svg': 'image/svg+xml', '.webmanifest': 'application/manifest+json' };
const server = createServer((request, answer) => {
  const path = decodeURIComponent(request.url.split('?')[0]);
  const file = join(root, path === '/' ? 'index.html' : path);
  if (!existsSync(file)) return answer.writeHead(404).end();
  return answer.writeHead(200, { 'content-type': types[extname(file)] ?? 'application/octet-stream' }).end(readFileSync(file));
});
await new Promise((done) => server.listen(0, '127.0.0.1', done));
const address = `http://127.0.0.1:${server.address().port}/`;
const browser = await chromium.launch({ executablePath: process.env.CHROMIUM ?? '/usr/bin/chromium', args: ['--no-sandbox', '--disable-gpu'] });
const rows = [];
const median = (numbers) => [...numbers].sort((one, other) => one - other)[Math.floor(numbers.length / 2)] ?? 'under 16';

async function slowPage() {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, serviceWorkers: 'block' });
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  await session.send('Emulation.setCPUThrottlingRate', { rate: slowed });
  await page.addInitScript(() => {
    globalThis.longTasks = [];
    globalThis.waits = [];
    new PerformanceObserver((list) => { for (const { duration } of list.getEntries()) globalThis.longTasks.push(duration); }).observe({ type: 'longtask', buffered: true });
    new PerformanceObserver((list) => { for (const { name, duration } of list.getEntries()) if (name === 'input') globalThis.waits.push(duration); }).observe({ type: 'event', durationThreshold: 16, buffered: true });
  });
  return { page, context };
}

{
  const { page, context } = await slowPage();
  await page.goto(address);
  await page.getByRole('button', { name: 'Start an empty position' }).waitFor();
  const ms = await page.evaluate(() => performance.now());
  rows.push({ what: 'first screen can be used', 'median ms': Math.round(ms) });
  await context.close();
}

for (const [sample, group, field, text, hasWorking] of [
  ['Bilge pump', 'How it runs', 'Highest shaft speed', '1450.5 rpm', false],
  ['Crank with its bearing', 'How it runs', 'Highest shaft speed', '7800 rpm', false],
  ['Crank with its bearing', 'How it runs', 'Highest shaft speed', '7800 rpm', true],
]) {
  const { page, context } = await slowPage();
  await page.goto(address);
  await page.getByRole('button', { name: sample }).click();
  await page.locator('section.verdict seat-verdict .stamp').waitFor();
  await page.locator('summary', { has: page.getByRole('heading', { name: group, exact: true }) }).click();
  if (hasWorking) await page.getByText('Show the working').click();
  await page.waitForTimeout(3000);
  const input = page.getByLabel(field);
  await input.fill('');
  await page.waitForTimeout(1000);
  await page.evaluate(() => { globalThis.longTasks = []; globalThis.waits = []; });
  // Keys alone: a search for the field would run on the page's thread and count as its tasks.
  for (const letter of text) {
    await page.keyboard.type(letter);
    await page.waitForTimeout(250);
  }
  await page.waitForTimeout(1000);
  const { tasks, waits } = await page.evaluate(() => ({ tasks: globalThis.longTasks, waits: globalThis.waits }));
  rows.push({ what: `typing in "${sample}"${hasWorking ? ', the working open' : ''}, from a key to its paint`, 'median ms': median(waits), 'worst ms': Math.max(0, ...waits), 'tasks over 50 ms': tasks.length, 'longest ms': Math.round(Math.max(0, ...tasks)) });
  await context.close();
}
console.log(`CPU slowed ${slowed} times; a long task is one over 50 ms`);
console.table(rows);
await browser.close();
server.close();
