import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { styleOf } from '@seatwright/core/wording';
import '@seatwright/elements/seat-choice-field.define.js';
import '@seatwright/elements/seat-length-field.define.js';
import { isObject, listAt, textAt, withValue, type Json, type JsonObject, type Path } from '../document/raw-document.js';
import { toolForm } from '../form/groups.js';
import { renderList } from '../form/render-list.js';
import type { Hindrance } from '../keeping/device-store.js';
import { newId } from '../keeping/new-id.js';
import type { OwnTool, OwnTools } from '../keeping/own-tools.js';
import { unitsOfDevice } from '../keeping/units-of-device.js';
import { PageElement } from '../page-element.js';
import { saveFile } from '../sharing/save-file.js';
import { today } from '../sheet/compute-sheet.js';
import type { FormContext } from '../view/sheet-context.js';
import { words } from '../words/index.js';
import { sentences } from '../words/sentences.js';
import { faultOfTools } from './fault-of-tools.js';
import { toolListOf, toolsIn } from './tool-list.js';

/** The tubes and sockets of the person at this device: added, changed and taken away; each is kept at every stroke. */
@customElement('bench-own-tools')
export class BenchOwnTools extends PageElement {
  @property({ attribute: false }) tools: OwnTools | null = null;
  @state() private own: readonly OwnTool[] = [];
  @state() private hindrance: Hindrance | null = null;
  @state() private fault = '';
  @state() private news = '';
  /** What was taken away last, until it is put back or something else is done. */
  @state() private removed: OwnTool | null = null;
  /** Ids of what the store does not have as it stands here. */
  private readonly unkept = new Set<string>();
  private writing: Promise<void> | null = null;
  private unfollow: (() => void) | null = null;
  /** A mark only: strokes are no news. */
  @state() private isWriting = false;

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener('beforeunload', this.warn);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener('beforeunload', this.warn);
    this.unfollow?.();
    this.unfollow = null;
  }

  override render(): TemplateResult {
    const { own, hindrance, fault, news, removed } = this;
    return html`<main class="start own-tools">
      <p><button type="button" class="plain" @click=${() => void this.leave()}>‹ ${words.tools.back}</button></p>
      <h1>${words.tools.heading}</h1>
      <p class="claim">${words.tools.says}</p>
      ${hindrance === null ? nothing : html`<p class="fault" role="alert">${words.keeping[hindrance]}. ${words.hindered[hindrance]}</p>`}
      ${fault === '' ? nothing : html`<p class="fault" role="alert">${fault}</p>`}
      <p role="status" class="news">${news} ${removed === null ? nothing : html`<button type="button" class="plain" @click=${() => { this.putBack(removed); }}>${words.tools.putBack}</button>`}</p>
      ${own.length === 0 ? html`<p class="quiet">${words.tools.empty}</p>` : nothing}
      ${own.length === 0 || hindrance !== null ? nothing : html`<p class="quiet kept-mark">${words.keeping.kept}${this.isWriting ? html`<span class="under-way" aria-hidden="true"> …</span>` : nothing}</p>`}
      ${renderList(toolForm(), words.add.tool, words.unfinishedTool, this.context())}
      <div class="shelves">
        <button type="button" class="shelf" ?disabled=${own.length === 0} @click=${() => { saveFile(`seatwright-tools-${today()}.json`, toolListOf(own.map(({ tool }) => tool), today())); }}><strong>${words.tools.save}</strong><span>${words.tools.saveSays}</span></button>
        <label class="shelf file"><strong>${words.tools.open}</strong><span>${words.tools.openSays}</span><input type="file" accept=".json,application/json" @change=${(event: Event) => void this.openFile(event.target as HTMLInputElement)} /></label>
      </div>
    </main>`;
  }

  /** Reads the list anew, and takes in what comes with it. */
  async show(tools: OwnTools, toTakeIn: readonly JsonObject[] = []): Promise<void> {
    this.tools = tools;
    this.unfollow?.();
    this.unfollow = tools.follow(() => void this.readWhenKept());
    this.news = '';
    this.fault = '';
    this.removed = null;
    if (toTakeIn.length > 0) await this.takeIn(toTakeIn);
    else await this.read();
  }

  /** The form for the list, as if it were the tools of a workshop file. */
  private context(): FormContext {
    const tools = this.own.map(({ tool }) => tool);
    return {
      document: { toolsAtHand: tools },
      place: { machine: 0, position: 0 },
      sealPart: 0,
      bearingPart: null,
      fault: faultOfTools(tools),
      toBegin: [],
      style: styleOf(sentences, unitsOfDevice()),
      actions: { change: (path, value) => { this.change(path, value); }, goTo: (key) => void this.goTo(key) },
    };
  }

  private change(path: Path, value: Json | undefined): void {
    const before = this.own;
    const next = withValue({ toolsAtHand: before.map(({ tool }) => tool) }, path, value);
    const tools = listAt(next, ['toolsAtHand']).map((tool) => (isObject(tool) ? tool : {}));
    this.news = '';
    this.removed = null;
    if (tools.length < before.length) {
      const gone = before.find(({ tool }, i) => tool !== tools[i]);
      if (gone !== undefined) this.takeAway(gone);
      return;
    }
    this.own = tools.map((tool, i) => {
      const own = before[i] ?? { id: newId(), tool, revision: 0, addedAt: Date.now() };
      if (own.tool === tool && before[i] !== undefined) return own;
      this.unkept.add(own.id);
      return { ...own, tool };
    });
    this.keep();
  }

  private takeAway(gone: OwnTool): void {
    this.own = this.own.filter(({ id }) => id !== gone.id);
    this.removed = gone;
    this.news = words.tools.removed.replace('{name}', textAt(gone.tool, ['name']) || words.places.unnamed);
    this.unkept.add(gone.id);
    this.keep();
  }

  private putBack(gone: OwnTool): void {
    this.own = [...this.own, gone].sort((a, b) => a.addedAt - b.addedAt);
    this.removed = null;
    this.news = '';
    this.unkept.add(gone.id);
    this.keep();
  }

  /** Writes what is not kept yet, one after the other, the newest state of each. */
  private keep(): void {
    this.isWriting = true;
    this.writing ??= this.write().finally(() => {
      this.writing = null;
      this.isWriting = false;
    });
  }

  private async write(): Promise<void> {
    for (let [id] = this.unkept; id !== undefined && this.tools !== null; [id] = this.unkept) {
      this.unkept.delete(id);
      const now = this.own.find((one) => one.id === id);
      const outcome = now === undefined ? await this.tools.remove(id) : await this.tools.write(now);
      if ('hindrance' in outcome) {
        this.unkept.add(id);
        this.hindrance = outcome.hindrance;
        return;
      }
      this.hindrance = null;
      const written = outcome.value;
      if (now === undefined || written === undefined) continue;
      this.own = this.own.map((one) => (one.id === id ? { ...one, id: written.id, revision: written.revision, addedAt: written.addedAt } : one));
      if (written.id === id) continue;
      // Another tab changed it meanwhile: this one goes on by another name, and both are shown.
      if (this.unkept.delete(id)) this.unkept.add(written.id);
      else await this.read();
    }
  }

  private async read(): Promise<void> {
    const own = await this.tools?.list();
    if (own === undefined) return;
    this.hindrance = 'hindrance' in own ? own.hindrance : null;
    if ('value' in own && this.unkept.size === 0) this.own = own.value;
  }

  /** What another tab wrote is shown once everything typed here is kept. */
  private async readWhenKept(): Promise<void> {
    await this.writing;
    await this.read();
  }

  private async openFile(input: HTMLInputElement): Promise<void> {
    const [file] = input.files ?? [];
    if (file === undefined) return;
    const read = toolsIn(await file.text());
    input.value = '';
    this.news = '';
    this.fault = 'fault' in read ? `${words.start.notOpened} ${read.fault}` : '';
    if ('tools' in read) await this.takeIn(read.tools);
  }

  private async takeIn(tools: readonly JsonObject[]): Promise<void> {
    await this.writing;
    const taken = await this.tools?.takeIn(tools);
    await this.read();
    if (taken === undefined || 'hindrance' in taken) this.fault = words.backup.refused;
    else this.news = words.tools.taken.replace('{count}', String(taken.value)).replace('{same}', String(tools.length - taken.value));
  }

  private async goTo(key: string): Promise<void> {
    await this.updateComplete;
    const field = this.querySelector<HTMLElement>(`[data-key="${CSS.escape(key)}"]`);
    const around = field?.closest('details');
    if (around != null) around.open = true;
    field?.querySelector('input')?.focus();
  }

  private readonly warn = (event: BeforeUnloadEvent): void => {
    if (this.isWriting || this.unkept.size > 0) event.preventDefault();
  };

  private async leave(): Promise<void> {
    await this.writing;
    this.dispatchEvent(new Event('bench-leave', { bubbles: true }));
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-own-tools': BenchOwnTools;
  }
}
