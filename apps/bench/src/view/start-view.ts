import { html, nothing, type TemplateResult } from 'lit';
import { placeKey, type Place } from '../document/places.js';
import type { BackupContents } from '../keeping/backup.js';
import type { Hindrance, SetAside } from '../keeping/device-store.js';
import type { KeptSheet } from '../keeping/kept-sheets.js';
import { samples, type Sample } from '../samples.js';
import { words } from '../words/index.js';
import { currentLanguage, languageNames, languages, type Language } from '../words/language.js';
import { keptMachines, type DueLine } from './kept-machines.js';

/** What the first screen knows. */
interface StartState {
  readonly openTitle: string | null;
  readonly fault: string;
  readonly news: string;
  /** Title of the sheet that was removed last, while it can be put back. */
  readonly removedTitle: string | null;
  /** Title of a job that came with the address. */
  readonly arrivedTitle: string | null;
  readonly isOpening: boolean;
  readonly kept: readonly KeptSheet[];
  /** What is due of each position of each kept sheet; comes after the list. */
  readonly due: ReadonlyMap<string, ReadonlyMap<string, DueLine>>;
  /** Why what is kept cannot be shown; null where all is well. */
  readonly hindrance: Hindrance | null;
  /** A backup that waits for a word what to do with it. */
  readonly backup: BackupContents | null;
  readonly aside: SetAside | null;
  /** Nothing is kept here yet. */
  readonly isEmpty: boolean;
  /** How many tubes and sockets of one's own are noted. */
  readonly ownCount: number;
  readonly language: Language;
}

interface StartActions {
  openKept(sheet: KeptSheet, place: Place): void;
  removeKept(sheet: KeptSheet): void;
  putBackKept(): void;
  openSample(sample: Sample): void;
  openFile(file: File): void;
  startEmpty(): void;
  openArrived(): void;
  leaveArrived(): void;
  showOwnTools(): void;
  backUp(): void;
  restore(way: 'add' | 'replace'): void;
  leaveBackup(): void;
  putBack(): void;
  dropAside(): void;
  goBack(): void;
  speak(language: Language): void;
}

/** The first screen: a way back to the open sheet, a way to start one. */
export function startView({ openTitle, fault, news, removedTitle, arrivedTitle, isOpening, kept, due, hindrance, backup, aside, isEmpty, ownCount, language }: StartState, actions: StartActions): TemplateResult {
  return html`<main class="start" aria-busy=${isOpening ? 'true' : 'false'}>
    <div class="above">
      <p class="wordmark"><img src="./icon.svg" alt="" width="32" height="32" />${words.name}</p>
      <p class="languages" role="group" aria-label=${words.language.choose}>${languages.map((one) => html`<button type="button" class="plain" lang=${one} aria-pressed=${one === language ? 'true' : 'false'} @click=${() => { actions.speak(one); }}>${languageNames[one]}</button>`)}</p>
    </div>
    <h1>${words.start.heading}</h1>
    <p class="claim">${words.claim}</p>
    ${fault === '' ? nothing : html`<p class="fault" role="alert">${fault}</p>`}
    ${hindrance === 'held up' || hindrance === 'outdated' ? html`<p class="fault" role="alert">${hindrance === 'held up' ? words.start.heldUp : words.start.outdated}</p>` : nothing}
    ${news === '' ? nothing : html`<p class="news" role="status">${news}</p>`}
    ${removedTitle === null ? nothing : html`<p class="news removed ways" role="status"><span>${words.start.removed.replace('{title}', removedTitle)}</span> <button type="button" class="plain" @click=${() => { actions.putBackKept(); }}>${words.start.putBack}</button></p>`}
    ${backup === null ? nothing : backupAsked(backup, actions)}
    ${aside === null ? nothing : setAside(aside, actions)}
    ${arrivedTitle === null ? nothing : html`<section class="arrived" aria-label=${words.share.came}><h2>${words.share.came}</h2><button type="button" class="shelf main-way" @click=${() => { actions.openArrived(); }}><strong>${words.share.open}</strong><span>${arrivedTitle}</span></button><p><button type="button" class="plain" @click=${() => { actions.leaveArrived(); }}>${words.share.leave}</button></p></section>`}
    ${openTitle === null ? nothing : html`<button type="button" class="shelf main-way" @click=${() => { actions.goBack(); }}><strong>${words.start.continue}</strong><span>${openTitle}</span></button>`}
    ${kept.length === 0 ? nothing : html`<h2>${words.start.kept}</h2><ul class="kept">${kept.map((sheet) => keptMachines(sheet, `${words.start.changed} ${dayOf(sheet.changedAt, language)}`, (place) => due.get(sheet.id)?.get(placeKey(place)), actions))}</ul>`}
    ${isEmpty ? nothing : html`<div class="shelves"><button type="button" class="shelf" @click=${() => { actions.backUp(); }}><strong>${words.backup.make}</strong><span>${words.backup.says}</span></button></div>`}
    <h2>${words.start.own}</h2>
    <div class="shelves">
      <button type="button" class="shelf" @click=${() => { actions.startEmpty(); }}><strong>${words.start.empty}</strong><span>${words.start.emptySays}</span></button>
      <label class="shelf file"><strong>${words.start.open}</strong><span>${words.start.openSays}</span><input type="file" accept=".json,application/json" @change=${(event: Event) => { const [file] = (event.target as HTMLInputElement).files ?? []; if (file !== undefined) actions.openFile(file); }} /></label>
      <button type="button" class="shelf" @click=${() => { actions.showOwnTools(); }}><strong>${words.tools.short}</strong><span>${ownCount === 0 ? words.tools.shortEmpty : words.tools.shortSays.replace('{count}', String(ownCount))}</span></button>
    </div>
    <h2>${words.start.samples}</h2>
    <div class="shelves">${samples.map((sample) => html`<button type="button" class="shelf" @click=${() => { actions.openSample(sample); }}><strong>${words.samples[sample].title}</strong><span>${words.samples[sample].says}</span></button>`)}</div>
    <footer><p>${words.advises}</p><p>${hindrance === null ? words.stays : hindrance === 'refused' || hindrance === 'no room' ? words.staysNowhere : ''}</p></footer>
  </main>`;
}

/** What to do with a backup, where something is kept already. */
function backupAsked({ madeOn, sheets, tools }: BackupContents, actions: StartActions): TemplateResult {
  const way = (which: 'add' | 'replace', name: string, says: string) => html`<button type="button" class="shelf" @click=${() => { actions.restore(which); }}><strong>${name}</strong><span>${says}</span></button>`;
  return html`<section class="arrived" aria-label=${words.backup.came}>
    <h2>${words.backup.came} ${madeOn}</h2>
    <p>${counted(words.backup.holds, sheets.length, tools.length)}</p>
    <div class="shelves">${way('add', words.backup.add, words.backup.addSays)}${way('replace', words.backup.replace, words.backup.replaceSays)}</div>
    <p><button type="button" class="plain" @click=${() => { actions.leaveBackup(); }}>${words.backup.leave}</button></p>
  </section>`;
}

/** What a restored backup took the place of, and the way back. */
function setAside({ sheets, tools, setAsideAt }: SetAside, actions: StartActions): TemplateResult {
  return html`<p class="aside ways"><span>${counted(words.backup.aside, sheets.length, tools.length).replace('{date}', dayOf(setAsideAt, currentLanguage()))}</span>
    <button type="button" class="plain" @click=${() => { actions.putBack(); }}>${words.backup.putBack}</button>
    <button type="button" class="plain" @click=${() => { actions.dropAside(); }}>${words.backup.dropAside}</button></p>`;
}

function counted(text: string, sheetCount: number, toolCount: number): string {
  return text.replace('{sheets}', String(sheetCount)).replace('{tools}', String(toolCount));
}

/** The day of a change, as the language writes days. English is written in many ways: as this device does. */
function dayOf(time: number, language: Language): string {
  return new Date(time).toLocaleDateString(language === 'en' ? undefined : language, { dateStyle: 'medium' });
}
