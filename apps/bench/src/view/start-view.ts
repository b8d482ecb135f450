import { html, nothing, type TemplateResult } from 'lit';
import { samples, type Sample } from '../samples.js';
import { words } from '../words.js';

interface StartActions {
  openSample(sample: Sample): void;
  openFile(file: File): void;
  startEmpty(): void;
  goBack(): void;
}

/** The first screen: a way back to the open sheet, a way to start one. */
export function startView(openTitle: string | null, fault: string, isOpening: boolean, actions: StartActions): TemplateResult {
  return html`<main class="start" aria-busy=${isOpening ? 'true' : 'false'}>
    <p class="wordmark"><img src="./icon.svg" alt="" width="32" height="32" />${words.name}</p>
    <h1>${words.start.heading}</h1>
    <p class="claim">${words.claim}</p>
    ${fault === '' ? nothing : html`<p class="fault" role="alert">${words.start.notOpened} ${fault}</p>`}
    ${openTitle === null ? nothing : html`<button type="button" class="shelf main-way" @click=${() => { actions.goBack(); }}><strong>${words.start.continue}</strong><span>${openTitle}</span></button>`}
    <h2>${words.start.own}</h2>
    <div class="shelves">
      <button type="button" class="shelf" @click=${() => { actions.startEmpty(); }}><strong>${words.start.empty}</strong><span>${words.start.emptySays}</span></button>
      <label class="shelf file"><strong>${words.start.open}</strong><span>${words.start.openSays}</span><input type="file" accept=".json,application/json" @change=${(event: Event) => { const [file] = (event.target as HTMLInputElement).files ?? []; if (file !== undefined) actions.openFile(file); }} /></label>
    </div>
    <h2>${words.start.samples}</h2>
    <div class="shelves">${samples.map((sample) => html`<button type="button" class="shelf" @click=${() => { actions.openSample(sample); }}><strong>${sample.title}</strong><span>${sample.says}</span></button>`)}</div>
    <footer><p>${words.advises}</p><p>${words.stays}</p></footer>
  </main>`;
}
