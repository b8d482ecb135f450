import { html, nothing, type TemplateResult } from 'lit';

interface Block {
  readonly id: string;
  readonly heading: string;
  /** The result of the block in one line; stays in sight when it is folded. */
  readonly line: string;
  readonly isOpen: boolean;
  readonly isStale?: boolean;
  readonly opened?: () => void;
  readonly content: unknown;
}

/** A block of the sheet in the order of the work, that folds to one line. */
export function renderBlock({ id, heading, line, isOpen, isStale = false, opened, content }: Block): TemplateResult {
  return html`<details class="block ${isStale ? 'stale' : ''}" id=${id} ?open=${isOpen} @toggle=${(event: Event) => { if (event.target === event.currentTarget && (event.currentTarget as HTMLDetailsElement).open) opened?.(); }}>
    <summary><h2>${heading}</h2>${line === '' ? nothing : html`<span class="line">${line}</span>`}</summary>
    <div class="content">${content}</div>
  </details>`;
}
