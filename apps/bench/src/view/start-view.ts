import { html, nothing, type TemplateResult } from 'lit';
import type { KeptSheet } from '../keeping/kept-sheets.js';
import { samples, type Sample } from '../samples.js';
import { words } from '../words.js';

/** What the first screen knows. */
interface StartState {
  readonly openTitle: string | null;
  readonly fault: string;
  readonly news: string;
  /** Title of a job that came with the address. */
  readonly arrivedTitle: string | null;
  readonly isOpening: boolean;
  readonly kept: readonly KeptSheet[];
  /** What is due of each kept sheet, by its id; comes after the list. */
  readonly due: ReadonlyMap<string, string>;
  /** True where the browser keeps nothing. */
  readonly keepsNothing: boolean;
}

interface StartActions {
  openKept(sheet: KeptSheet): void;
  removeKept(sheet: KeptSheet): void;
  openSample(sample: Sample): void;
  openFile(file: File): void;
  startEmpty(): void;
  openArrived(): void;
  leaveArrived(): void;
  backUp(): void;
  goBack(): void;
}

/** The first screen: a way back to the open sheet, a way to start one. */
export function startView({ openTitle, fault, news, arrivedTitle, isOpening, kept, due, keepsNothing }: StartState, actions: StartActions): TemplateResult {
  return html`<main class="start" aria-busy=${isOpening ? 'true' : 'false'}>
    <p class="wordmark"><img src="./icon.svg" alt="" width="32" height="32" />${words.name}</p>
    <h1>${words.start.heading}</h1>
    <p class="claim">${words.claim}</p>
    ${fault === '' ? nothing : html`<p class="fault" role="alert">${words.start.notOpened} ${fault}</p>`}
    ${news === '' ? nothing : html`<p class="news" role="status">${news}</p>`}
    ${arrivedTitle === null ? nothing : html`<section class="arrived" aria-label=${words.share.came}><h2>${words.share.came}</h2><button type="button" class="shelf main-way" @click=${() => { actions.openArrived(); }}><strong>${words.share.open}</strong><span>${arrivedTitle}</span></button><p><button type="button" class="plain" @click=${() => { actions.leaveArrived(); }}>${words.share.leave}</button></p></section>`}
    ${openTitle === null ? nothing : html`<button type="button" class="shelf main-way" @click=${() => { actions.goBack(); }}><strong>${words.start.continue}</strong><span>${openTitle}</span></button>`}
    ${kept.length === 0 ? nothing : html`<h2>${words.start.kept}</h2><ul class="kept">${kept.map((sheet) => html`<li><button type="button" class="shelf" @click=${() => { actions.openKept(sheet); }}><strong>${sheet.title}</strong><span>${words.start.changed} ${dayOf(sheet.changedAt)}</span>${(due.get(sheet.id) ?? '') === '' ? nothing : html`<span class="due">${due.get(sheet.id)}</span>`}</button><button type="button" class="plain" aria-label="${words.remove}: ${sheet.title}" @click=${() => { actions.removeKept(sheet); }}>${words.remove}</button></li>`)}</ul><p><button type="button" class="plain" @click=${() => { actions.backUp(); }}>${words.backup.make}</button> ${words.backup.says}</p>`}
    <h2>${words.start.own}</h2>
    <div class="shelves">
      <button type="button" class="shelf" @click=${() => { actions.startEmpty(); }}><strong>${words.start.empty}</strong><span>${words.start.emptySays}</span></button>
      <label class="shelf file"><strong>${words.start.open}</strong><span>${words.start.openSays}</span><input type="file" accept=".json,application/json" @change=${(event: Event) => { const [file] = (event.target as HTMLInputElement).files ?? []; if (file !== undefined) actions.openFile(file); }} /></label>
    </div>
    <h2>${words.start.samples}</h2>
    <div class="shelves">${samples.map((sample) => html`<button type="button" class="shelf" @click=${() => { actions.openSample(sample); }}><strong>${sample.title}</strong><span>${sample.says}</span></button>`)}</div>
    <footer><p>${words.advises}</p><p>${keepsNothing ? words.staysNowhere : words.stays}</p></footer>
  </main>`;
}

/** The day of a change, as this device writes days. */
function dayOf(time: number): string {
  return new Date(time).toLocaleDateString(undefined, { dateStyle: 'medium' });
}
