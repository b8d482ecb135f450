import { updateWhenLocaleChanges } from '@lit/localize';
import { LitElement } from 'lit';

/** A part of the page: drawn anew when the language changes, and styled by the page's own style sheet. */
export abstract class PageElement extends LitElement {
  constructor() {
    super();
    updateWhenLocaleChanges(this);
  }

  protected override createRenderRoot(): HTMLElement {
    return this;
  }
}
