import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { SheetKeeping } from '../keeping/sheet-keeping.js';
import { PageElement } from '../page-element.js';
import { words } from '../words/index.js';

/** How it stands with keeping the open sheet. Drawn at once and by itself: the sheet is drawn later, and "kept" must not outlast the next key. */
@customElement('bench-keeping-mark')
export class KeepingMark extends PageElement {
  @property({ attribute: false }) keeping: SheetKeeping | null = null;
  private readonly draw = (): void => { this.requestUpdate(); };

  override connectedCallback(): void {
    super.connectedCallback();
    this.keeping?.watch(this.draw);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.keeping?.unwatch(this.draw);
  }

  override render(): TemplateResult | typeof nothing {
    if (this.keeping === null) return nothing;
    const { told, state, isUnsaved } = this.keeping;
    const text = told === 'untouched' ? (isUnsaved ? words.bar.unsaved : '') : words.keeping[told];
    return html`<span role="status">${text}</span>${state === 'being kept' ? html`<span class="under-way" aria-hidden="true"> …</span>` : nothing}`;
  }
}
