import type { Page } from 'playwright-core';

/** Goes on with the Tab key, as somebody without a pointer does, until what has the focus bears the name. */
export async function tabTo(page: Page, wanted: string | RegExp): Promise<void> {
  const seen: string[] = [];
  for (let i = 0; i < 250; i += 1) {
    await page.keyboard.press('Tab');
    const name = await focusedName(page);
    if (typeof wanted === 'string' ? name === wanted : wanted.test(name)) return;
    seen.push(name);
  }
  throw new Error(`no way by keyboard to "${wanted}"; passed ${[...new Set(seen)].join(' | ')}`);
}

/** What has the focus is called by its label, or says itself. */
async function focusedName(page: Page): Promise<string> {
  return page.evaluate(() => {
    let active: Element | null = document.activeElement;
    while (active?.shadowRoot?.activeElement != null) active = active.shadowRoot.activeElement;
    if (active === null) return '';
    const text = (element: Element | null | undefined) => element?.textContent.replaceAll(/\s+/gu, ' ').trim() ?? '';
    const label = active.getAttribute('aria-label') ?? '';
    if (label !== '') return label;
    const ofId = active.id === '' ? null : (active.getRootNode() as ParentNode).querySelector(`label[for="${active.id}"]`);
    if (ofId !== null) return text(ofId);
    const around = active.closest('label');
    if (around !== null) return text(around);
    return active.matches('summary') ? text(active.querySelector('h2, h3')) || text(active) : text(active);
  });
}

/** Whether what has the focus is in sight, under nothing that floats. */
export async function isFocusInSight(page: Page): Promise<boolean> {
  return page.evaluate(() => {
    let active: Element | null = document.activeElement;
    while (active?.shadowRoot?.activeElement != null) active = active.shadowRoot.activeElement;
    const box = active?.getBoundingClientRect();
    const strip = document.querySelector('.strip-place.shown .strip')?.getBoundingClientRect();
    return box !== undefined && box.bottom <= innerHeight && (strip === undefined || box.top >= strip.bottom);
  });
}
