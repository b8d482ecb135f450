import { html, LitElement, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { words } from '../words.js';

/** Says once that the page works without a network from now on, and asks before a newer one takes its place. */
@customElement('bench-offline-notice')
export class OfflineNotice extends LitElement {
  @state() private says: 'nothing' | 'ready' | 'newer' = 'nothing';
  private takeNewer: () => void = () => undefined;

  /** The page's style sheet works on plain elements. */
  protected override createRenderRoot(): HTMLElement {
    return this;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    if ('serviceWorker' in navigator) void this.register();
  }

  /** Fetched by itself: the first screen does not wait for it. */
  private async register(): Promise<void> {
    const { registerSW } = await import('virtual:pwa-register');
    const update = registerSW({
      onOfflineReady: () => { this.says = 'ready'; },
      onNeedRefresh: () => { this.says = 'newer'; },
      // A page that may keep nothing may not work offline either: it works all the same while the network is there.
      onRegisterError: () => undefined,
    });
    this.takeNewer = () => void update(true);
  }

  override render(): TemplateResult | typeof nothing {
    if (this.says === 'nothing') return nothing;
    const dismiss = html`<button type="button" class="plain" @click=${() => { this.says = 'nothing'; }}>${words.offline.later}</button>`;
    return this.says === 'ready'
      ? html`<p class="notice screen" role="status">${words.offline.ready} ${dismiss}</p>`
      : html`<p class="notice newer screen" role="status">${words.offline.newer} <button type="button" class="plain" @click=${() => { this.takeNewer(); }}>${words.offline.take}</button> ${dismiss}</p>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-offline-notice': OfflineNotice;
  }
}
