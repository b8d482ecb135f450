import { existsSync } from 'node:fs';
import { chromium, type Browser, type BrowserContext, type BrowserContextOptions, type Page } from 'playwright-core';
import { servePage, type ServedPage } from './served-page.js';

const executablePath = process.env['CHROMIUM'] ?? '/usr/bin/chromium';

/** A page under test, and everything that went wrong on it. */
export interface OpenBench {
  readonly page: Page;
  readonly context: BrowserContext;
  /** Console errors, uncaught exceptions, and requests to anywhere else. */
  readonly troubles: readonly string[];
}

/** One browser and one server for the tests of a file. */
export class Bench {
  private browser: Browser | null = null;
  private served: ServedPage | null = null;

  private readonly folder: string | undefined;

  /** @param folder where the page lies; the workshop page if left out */
  constructor(folder?: string) {
    this.folder = folder;
  }

  async start(): Promise<void> {
    if (!existsSync(executablePath)) {
      throw new Error(`No Chromium at ${executablePath}. Install it ("apt-get install chromium" on Debian), or set CHROMIUM to the path of one.`);
    }
    this.served = await servePage(this.folder);
    this.browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu', '--disable-background-networking', '--no-first-run'] });
  }

  async stop(): Promise<void> {
    await this.browser?.close();
    await this.served?.close();
  }

  /** Serves another build from now on, as a server does after an update. */
  serveFrom(folder: string): void {
    this.served?.serveFrom(folder);
  }

  /** A fresh page in a fresh context. */
  async open(options: BrowserContextOptions = {}, path = ''): Promise<OpenBench> {
    if (this.browser === null || this.served === null) throw new Error('not started');
    const { address } = this.served;
    const context = await this.browser.newContext({ viewport: { width: 1440, height: 900 }, locale: 'en-GB', timezoneId: 'UTC', colorScheme: 'light', reducedMotion: 'reduce', ...options });
    const page = await context.newPage();
    const troubles: string[] = [];
    page.on('console', (message) => { if (message.type() === 'error' || message.type() === 'warning') troubles.push(`${message.type()}: ${message.text()}`); });
    page.on('pageerror', (error) => troubles.push(`exception: ${error.message}`));
    page.on('request', (request) => { if (!request.url().startsWith(address) && !request.url().startsWith('data:') && !request.url().startsWith('blob:')) troubles.push(`request to ${request.url()}`); });
    page.setDefaultTimeout(10_000);
    await page.goto(`${address}${path}`);
    return { page, context, troubles };
  }
}

/** Opens one of the samples of the first screen. */
export async function openSample(page: Page, title: string): Promise<void> {
  await page.getByRole('button', { name: title }).click();
  await page.locator('section.verdict seat-verdict .stamp').waitFor();
}

/** Unfolds a block or a group of the sheet by its heading. */
export async function unfold(page: Page, heading: string): Promise<void> {
  const summary = page.locator('summary', { has: page.getByRole('heading', { name: heading, exact: true }) });
  if (!(await summary.evaluate((element) => (element.parentElement as HTMLDetailsElement).open))) await summary.click();
}

/** The word of the verdict that the sheet shows. */
export async function verdictOf(page: Page): Promise<string> {
  return (await page.locator('section.verdict seat-verdict .stamp').innerText()).trim().toLowerCase();
}

/** Waits until the page says that all that was typed is kept: no newer write is under way. */
export async function allKept(page: Page): Promise<void> {
  await page.getByRole('status').getByText('Kept on this device').waitFor();
  await page.locator('.bar .under-way').waitFor({ state: 'detached' });
}
