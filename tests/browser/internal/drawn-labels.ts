import type { Page } from 'playwright-core';

/** A drawing to be made: the element, the width of its place, and what it is given. */
export interface DrawnCase {
  readonly name: string;
  readonly tag: 'seat-section' | 'seat-bearing-section';
  readonly width: number;
  readonly given: Readonly<Record<string, unknown>>;
}

/** Draws the cases on the page, a sheaf at a time, and tells which texts of one drawing meet each other, leave the paper, or are no words at all. */
export async function troublesOfLabels(page: Page, cases: readonly DrawnCase[]): Promise<readonly string[]> {
  const troubles: string[] = [];
  for (let from = 0; from < cases.length; from += sheaf) troubles.push(...(await page.evaluate(drawAndLook, cases.slice(from, from + sheaf))));
  return troubles;
}

const sheaf = 24;

async function drawAndLook(cases: readonly DrawnCase[]): Promise<readonly string[]> {
  const drawings = cases.map(({ tag, width, given }) => {
    const place = document.createElement('div');
    place.style.width = `${width}px`;
    const drawing = document.createElement(tag) as HTMLElement & { readonly updateComplete: Promise<unknown> };
    Object.assign(drawing, given);
    place.append(drawing);
    return { place, drawing };
  });
  document.body.replaceChildren(...drawings.map(({ place }) => place));
  await new Promise((done) => { requestAnimationFrame(() => requestAnimationFrame(done)); });
  const troubles: string[] = [];
  for (const [at, { drawing }] of drawings.entries()) {
    await drawing.updateComplete;
    const found = (trouble: string) => troubles.push(`${cases[at]?.name ?? ''}: ${trouble}`);
    const papers = drawing.shadowRoot?.querySelectorAll('svg[part]') ?? [];
    if (papers.length === 0) found('nothing was drawn');
    for (const svg of papers) {
      const paper = svg.getBoundingClientRect();
      const texts = [...svg.querySelectorAll('text')].map((text) => ({ text: text.textContent.trim(), box: text.getBoundingClientRect() }));
      texts.forEach(({ text, box }, i) => {
        if (text === '' || /NaN|undefined|null/u.test(text)) found(`"${text}" is no word`);
        if (box.left < paper.left - 0.5 || box.right > paper.right + 0.5 || box.top < paper.top - 0.5 || box.bottom > paper.bottom + 0.5) found(`"${text}" leaves the paper`);
        for (const other of texts.slice(i + 1)) {
          // The box of a text holds room for accents: what is written in it is lower by three px on either side.
          const isApart = box.right <= other.box.left || other.box.right <= box.left || box.bottom - 3 <= other.box.top + 3 || other.box.bottom - 3 <= box.top + 3;
          if (!isApart) found(`"${text}" meets "${other.text}"`);
        }
      });
      if (/NaN|undefined|Infinity/u.test(svg.innerHTML)) found('a place is no number');
    }
  }
  return troubles;
}
