import { readFileSync } from 'node:fs';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { allKept, Bench, openSample, unfold } from './internal/bench.js';

const bench = new Bench();
beforeAll(() => bench.start());
afterAll(() => bench.stop());

const anotherPage = async (context: BrowserContext, address: string): Promise<Page> => {
  const page = await context.newPage();
  page.setDefaultTimeout(10_000);
  await page.goto(address);
  return page;
};

async function note(page: Page, text: string): Promise<void> {
  await unfold(page, 'How it runs');
  await page.getByLabel('Highest shaft speed').fill(text);
}

describe('what is typed', () => {
  it('is found again after the page was killed in the middle of typing', async () => {
    const { page, context, troubles } = await bench.open();
    const address = page.url();
    await openSample(page, 'Bilge pump');
    await unfold(page, 'How it runs');
    await page.getByLabel('Highest shaft speed').fill('');
    await page.getByLabel('Highest shaft speed').pressSequentially('1725');
    await allKept(page);
    await page.close({ runBeforeUnload: false });
    const again = await anotherPage(context, address);
    await again.getByRole('button', { name: /^Bilge pump 2, pump shaft/ }).click();
    await unfold(again, 'How it runs');
    await expect.poll(() => again.getByLabel('Highest shaft speed').inputValue()).toBe('1725');
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('in one tab is shown in the other that has the sheet too, and taken back there; the list of a third tells of new sheets', async () => {
    const { page, context, troubles } = await bench.open();
    const address = page.url();
    await openSample(page, 'Bilge pump');
    await note(page, '1000');
    await allKept(page);
    const [other, third] = [await anotherPage(context, address), await anotherPage(context, address)];
    await other.getByRole('button', { name: /^Bilge pump 2, pump shaft/ }).click();
    await unfold(other, 'How it runs');
    await note(page, '1100');
    await other.getByRole('status').getByText('Changed in another tab').waitFor();
    await expect.poll(() => other.getByLabel('Highest shaft speed').inputValue()).toBe('1100');
    await note(other, '1200');
    await expect.poll(() => page.getByLabel('Highest shaft speed').inputValue()).toBe('1200');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => other.getByLabel('Highest shaft speed').inputValue()).toBe('1100');
    await page.getByRole('button', { name: /Sheets$/ }).click();
    await openSample(page, 'Winch gearbox');
    await note(page, '900');
    await expect.poll(() => third.locator('.kept .shelf strong').count()).toBe(2);
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('in two tabs that hear nothing of each other is overwritten by neither: the later one goes on as a copy and says so', async () => {
    const { page, context } = await bench.open();
    const address = page.url();
    await context.addInitScript(() => { BroadcastChannel.prototype.postMessage = () => undefined; });
    await page.reload();
    await openSample(page, 'Bilge pump');
    await note(page, '1000');
    await allKept(page);
    const other = await anotherPage(context, address);
    await other.getByRole('button', { name: /^Bilge pump 2, pump shaft/ }).click();
    await note(page, '1100');
    await page.waitForTimeout(300);
    await note(other, '1200');
    await other.getByRole('status').getByText('Kept as a copy').waitFor();
    const third = await anotherPage(context, address);
    const listed = async (page: Page) => (await page.locator('.kept .shelf strong').allTextContents()).toSorted();
    await expect.poll(() => listed(third)).toEqual(['Bilge pump 2, pump shaft, motor side', 'Bilge pump 2, pump shaft, motor side (2)']);
    // The copy is one still after it was opened and changed again.
    await third.getByRole('button', { name: /^Bilge pump 2, pump shaft, motor side \(2\)/ }).click();
    await note(third, '1300');
    await allKept(third);
    await third.getByRole('button', { name: /Sheets$/ }).click();
    await expect.poll(() => listed(third)).toEqual(['Bilge pump 2, pump shaft, motor side', 'Bilge pump 2, pump shaft, motor side (2)']);
    await context.close();
  });

  it('can be removed, and put back', async () => {
    const { page, context } = await bench.open();
    const address = page.url();
    await openSample(page, 'Bilge pump');
    await note(page, '1000');
    await allKept(page);
    const again = await anotherPage(context, address);
    await again.getByRole('button', { name: /^Remove: Bilge pump 2/ }).click();
    await expect.poll(() => again.locator('.kept').count()).toBe(0);
    await again.getByRole('status').getByText('Removed: Bilge pump 2').waitFor();
    await again.getByRole('button', { name: 'Put it back' }).click();
    await again.getByRole('button', { name: /^Bilge pump 2, pump shaft/ }).click();
    await expect.poll(() => again.getByLabel('Highest shaft speed').inputValue()).toBe('1000');
    await again.getByRole('button', { name: /Sheets$/ }).click();
    await again.getByRole('button', { name: /^Remove: Bilge pump 2/ }).click();
    await again.getByRole('button', { name: 'Put it back' }).waitFor();
    await again.reload();
    await expect.poll(() => again.locator('.kept').count()).toBe(0);
    await context.close();
  });

  it('is not kept where the browser keeps nothing, and the page says so', async () => {
    const { page, context } = await bench.open();
    await page.addInitScript(() => {
      const denied = () => { throw new DOMException('denied', 'SecurityError'); };
      Object.defineProperty(globalThis, 'indexedDB', { value: { open: denied } });
      Object.defineProperty(globalThis, 'BroadcastChannel', { value: class { constructor() { denied(); } } });
    });
    await page.reload();
    await page.getByText('this browser keeps nothing').waitFor();
    await openSample(page, 'Bilge pump');
    await note(page, '1000');
    await page.getByRole('status').getByText('Not kept: save it as a file').waitFor();
    await page.getByRole('alert').getByText('This browser keeps nothing').waitFor();
    await context.close();
  });
});

/** Holds the store open as the first version of this page did: it hears nothing of newer ones. */
const holdAsFirstVersion = (page: Page): Promise<void> => page.evaluate(() => new Promise<void>((done, failed) => {
  const request = indexedDB.open('seatwright', 1);
  request.onupgradeneeded = () => { request.result.createObjectStore('sheets', { keyPath: 'id' }); };
  request.onsuccess = () => {
    (globalThis as unknown as { held: IDBDatabase }).held = request.result;
    done();
  };
  request.onerror = () => { failed(new Error('not opened')); };
}));

/** Opens the store of the page beside it at another version, as a newer page would. */
const openNewer = (page: Page): Promise<string> => page.evaluate(() => new Promise<string>((done) => {
  const request = indexedDB.open('seatwright', 99);
  request.onblocked = () => { done('blocked'); };
  request.onsuccess = () => {
    request.result.close();
    done('opened');
  };
}));

const status = (page: Page, text: string) => page.getByRole('status').getByText(text).waitFor();

describe('the store', () => {
  it('held by an older tab: the work goes on, the page says why, and keeps everything once that tab is closed', async () => {
    const { page: older, context } = await bench.open({}, 'icon.svg');
    const address = new URL('.', older.url()).href;
    await holdAsFirstVersion(older);
    const page = await anotherPage(context, address);
    await page.getByRole('alert').getByText('Close it; you can begin meanwhile').waitFor();
    await openSample(page, 'Bilge pump');
    await note(page, '1111');
    await page.getByRole('alert').getByText('Another tab of this browser still shows an older version').waitFor();
    await older.close();
    await allKept(page);
    await expect.poll(() => page.locator('.keeping-panel').count()).toBe(0);
    const again = await anotherPage(context, address);
    await again.getByRole('button', { name: /^Bilge pump 2, pump shaft/ }).waitFor();
    await context.close();
  });

  it('taken over by a newer page: this one gives way at once, says so, and brings what was typed along when it is loaded anew', async () => {
    const { page, context } = await bench.open();
    const address = page.url();
    await openSample(page, 'Bilge pump');
    await note(page, '1000');
    await allKept(page);
    const newer = await context.newPage();
    await newer.goto(`${address}icon.svg`);
    expect(await openNewer(newer)).toBe('opened');
    await note(page, '1234');
    await page.getByRole('alert').getByText('A newer version of this page is open in another tab').waitFor();
    // The newer page is gone and its store with it: the present one may have it again.
    await newer.evaluate(() => new Promise((done) => { indexedDB.deleteDatabase('seatwright').onsuccess = done; }));
    await newer.close();
    page.on('dialog', (dialog) => void dialog.accept());
    await page.reload();
    await unfold(page, 'How it runs');
    await expect.poll(() => page.getByLabel('Highest shaft speed').inputValue()).toBe('1234');
    await allKept(page);
    await context.close();
  });

  it('closed by the browser in the middle of the work: it is opened again, and what is typed next is kept', async () => {
    const { page, context, troubles } = await bench.open();
    const address = page.url();
    await openSample(page, 'Bilge pump');
    await note(page, '1000');
    await allKept(page);
    const devtools = await context.newCDPSession(page);
    await devtools.send('Storage.clearDataForOrigin', { origin: new URL(address).origin, storageTypes: 'indexeddb' });
    await note(page, '1001');
    await allKept(page);
    const again = await anotherPage(context, address);
    await again.getByRole('button', { name: /^Bilge pump 2, pump shaft/ }).click();
    await unfold(again, 'How it runs');
    await expect.poll(() => again.getByLabel('Highest shaft speed').inputValue()).toBe('1001');
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('full while somebody types: says so, offers a file, goes on working, and keeps again once there is room', async () => {
    const { page, context, troubles } = await bench.open({ acceptDownloads: true });
    const address = page.url();
    const devtools = await context.newCDPSession(page);
    await devtools.send('Storage.overrideQuotaForOrigin', { origin: new URL(address).origin, quotaSize: 1 });
    await openSample(page, 'Bilge pump');
    await note(page, '1725');
    await page.getByRole('alert').getByText('The storage of this device is full').waitFor();
    await status(page, 'no room left');
    // The work goes on: the verdict follows, undo goes back and forth.
    await page.getByLabel('Highest shaft speed').fill('9000');
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByRole('button', { name: 'Redo' }).click();
    const [download] = await Promise.all([page.waitForEvent('download'), page.locator('.keeping-panel').getByRole('button', { name: 'Save as file' }).click()]);
    expect(readFileSync(await download.path(), 'utf8')).toContain('"9000"');
    await devtools.send('Storage.overrideQuotaForOrigin', { origin: new URL(address).origin });
    await page.getByRole('button', { name: 'Try again' }).click();
    await allKept(page);
    await expect.poll(() => page.locator('.keeping-panel').count()).toBe(0);
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('full from one stroke to the next: what was kept before stays kept, and what is typed last is kept once there is room', async () => {
    const { page, context, troubles } = await bench.open();
    await openSample(page, 'Bilge pump');
    await note(page, '1000');
    await allKept(page);
    await page.evaluate(() => {
      const { put } = IDBObjectStore.prototype;
      IDBObjectStore.prototype.put = () => { throw new DOMException('no room', 'QuotaExceededError'); };
      (globalThis as unknown as { makeRoom: () => void }).makeRoom = () => { IDBObjectStore.prototype.put = put; };
    });
    const speed = page.getByLabel('Highest shaft speed');
    await speed.press('End');
    await speed.pressSequentially('55', { delay: 40 });
    await page.getByRole('alert').getByText('The storage of this device is full').waitFor();
    await page.evaluate(() => { (globalThis as unknown as { makeRoom: () => void }).makeRoom(); });
    await speed.pressSequentially('5');
    await allKept(page);
    await expect.poll(() => page.locator('.keeping-panel').count()).toBe(0);
    await page.reload();
    await page.getByRole('button', { name: /^Bilge pump 2, pump shaft/ }).click();
    await unfold(page, 'How it runs');
    await expect.poll(() => page.getByLabel('Highest shaft speed').inputValue()).toBe('1000555');
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('that keeps nothing: a sheet that would be lost is not left for another without a word, and comes back after the page is loaded anew', async () => {
    const { page, context } = await bench.open();
    await page.addInitScript(() => { Object.defineProperty(globalThis, 'indexedDB', { value: { open: () => { throw new DOMException('denied', 'SecurityError'); } } }); });
    await page.reload();
    await openSample(page, 'Bilge pump');
    await note(page, '1717');
    await page.locator('.keeping-panel').waitFor();
    await page.getByRole('button', { name: /Sheets$/ }).click();
    let asked = '';
    page.on('dialog', (dialog) => {
      asked = dialog.message() || dialog.type();
      void (dialog.type() === 'beforeunload' ? dialog.accept() : dialog.dismiss());
    });
    await page.getByRole('button', { name: 'Winch gearbox' }).click();
    await expect.poll(() => asked).toContain('is not kept');
    await page.reload();
    await unfold(page, 'How it runs');
    await expect.poll(() => page.getByLabel('Highest shaft speed').inputValue()).toBe('1717');
    await context.close();
  });

  it('that cannot be read, or will not let go of a sheet: said in words, nothing breaks', async () => {
    const { page, context, troubles } = await bench.open();
    await openSample(page, 'Bilge pump');
    await note(page, '1000');
    await allKept(page);
    await page.getByRole('button', { name: /Sheets$/ }).click();
    const kept = page.getByRole('button', { name: /^Bilge pump 2, pump shaft/ });
    await kept.waitFor();
    await page.evaluate(() => {
      const fail = () => { throw new DOMException('spoilt', 'UnknownError'); };
      Object.assign(IDBObjectStore.prototype, { get: fail, getAll: fail, delete: fail });
    });
    await page.getByRole('button', { name: /^Remove: Bilge pump 2/ }).click();
    await page.getByRole('alert').getByText('It could not be removed.').waitFor();
    await kept.click();
    await page.getByRole('alert').getByText('could not be read').waitFor();
    await expect.poll(() => kept.count()).toBe(1);
    expect(troubles).toEqual([]);
    await context.close();
  });

  it('slow to write: the first screen waits for what is under way', async () => {
    const { page, context } = await bench.open();
    await page.evaluate(() => {
      const put = IDBObjectStore.prototype.put;
      IDBObjectStore.prototype.put = function slow(...given) {
        // Keeps the transaction busy for a while.
        const until = Date.now() + 400;
        const spin = (): void => { if (Date.now() < until) this.count().onsuccess = spin; };
        spin();
        return put.apply(this, given);
      };
    });
    await openSample(page, 'Bilge pump');
    await unfold(page, 'How it runs');
    await page.getByLabel('Highest shaft speed').fill('4321');
    await page.getByRole('button', { name: /Sheets$/ }).click();
    await page.getByRole('heading', { level: 1, name: 'Open a job sheet' }).waitFor();
    const read = await page.evaluate(() => new Promise<string>((done) => {
      indexedDB.open('seatwright').onsuccess = ({ target }) => {
        (target as IDBOpenDBRequest).result.transaction('sheets').objectStore('sheets').getAll().onsuccess = (event) => { done(JSON.stringify((event.target as IDBRequest).result)); };
      };
    }));
    expect(read).toContain('4321');
    await context.close();
  });
});

describe('what was changed', () => {
  it('is taken back and done again, a field at a time', async () => {
    const { page, context, troubles } = await bench.open();
    await openSample(page, 'Bilge pump');
    await unfold(page, 'How it runs');
    const speed = page.getByLabel('Highest shaft speed');
    const before = await speed.inputValue();
    await expect.poll(() => page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
    await speed.fill('');
    await speed.pressSequentially('9000');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => speed.inputValue()).toBe(before);
    await page.getByRole('button', { name: 'Redo' }).click();
    await expect.poll(() => speed.inputValue()).toBe('9000');
    await allKept(page);
    expect(troubles).toEqual([]);
    await context.close();
  });
});
