import { html, nothing, type TemplateResult } from 'lit';
import { isHindered, type KeepingState } from '../keeping/keeper.js';
import { words } from '../words/index.js';

interface KeepingActions {
  saveFile(): void;
  tryAgain(): void;
}

/** Says why the device does not keep what is typed, and what can be done. The work goes on beneath it. */
export function keepingPanel(keeping: KeepingState, { saveFile, tryAgain }: KeepingActions): TemplateResult | typeof nothing {
  if (!isHindered(keeping)) return nothing;
  return html`<section class="keeping-panel" role="alert">
    <p><strong>${words.keeping[keeping]}.</strong> ${words.hindered[keeping]} ${words.hinderedAll}</p>
    <p><button type="button" class="plain" @click=${saveFile}>${words.bar.save}</button> ${keeping === 'outdated' ? nothing : html`<button type="button" class="plain" @click=${tryAgain}>${words.tryAgain}</button>`}</p>
  </section>`;
}
