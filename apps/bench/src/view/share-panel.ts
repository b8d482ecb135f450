import { html, nothing, type TemplateResult } from 'lit';
import { words } from '../words/index.js';

/** What came of the wish to share: a link, or none because it would be too long. */
export type Shared = { readonly link: string } | 'too long';

interface ShareActions {
  close(): void;
  saveFile(): void;
}

/** The link of the open position, to be copied or handed on; or why there is none. */
export function sharePanel(shared: Shared | null, actions: ShareActions): TemplateResult | typeof nothing {
  if (shared === null) return nothing;
  const close = html`<button type="button" class="plain" @click=${() => { actions.close(); }}>${words.share.close}</button>`;
  if (shared === 'too long') return html`<section class="share-panel screen" aria-label=${words.share.button}><p role="status">${words.share.tooLong}</p><p><button type="button" class="plain" @click=${() => { actions.saveFile(); }}>${words.bar.save}</button> ${close}</p></section>`;
  return html`<section class="share-panel screen" aria-label=${words.share.button}>
    <p>${words.share.says}</p>
    <p class="line"><label for="share-link">${words.share.link}</label><input id="share-link" type="text" readonly .value=${shared.link} @focus=${(event: Event) => { (event.target as HTMLInputElement).select(); }} /></p>
    <p><button type="button" class="plain" @click=${(event: Event) => void copy(shared.link, event.currentTarget as HTMLButtonElement)}>${words.share.copy}</button> ${close}</p>
  </section>`;
}

/** Copies the link; where the browser will not, it is selected for the hand to copy. */
async function copy(link: string, button: HTMLButtonElement): Promise<void> {
  try {
    await navigator.clipboard.writeText(link);
    button.textContent = words.share.copied;
  } catch {
    button.closest('section')?.querySelector('input')?.select();
  }
}
