import { html, nothing, type TemplateResult } from 'lit';
import { customElement, state } from 'lit/decorators.js';
import { PageElement } from '../page-element.js';
import { words } from '../words/index.js';
import { readyToReload } from './before-reload.js';

/**
 * Says once that the page works without a network from now on, and asks before a newer one takes its place.
 * A newer page takes the place in all tabs at once: the tab that was asked loads it, any other says so and waits for its own hand.
 * It also says where a part of the page could not be fetched: what was tapped would stay shut in silence.
 */
@customElement('bench-offline-notice')
export class OfflineNotice extends PageElement {
  @state() private says: 'nothing' | 'ready' | 'newer' | 'not yet' | 'replaced' | 'missed' = 'nothing';
  private takeNewer: () => void = () => undefined;
  private wasAsked = false;
  /** Why parts of the page could not be fetched, as the bundler's own code tells. */
  private readonly misses = new WeakSet();

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener('vite:preloadError', this.noteMiss);
    window.addEventListener('unhandledrejection', this.missed);
    if ('serviceWorker' in navigator) void this.register();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener('vite:preloadError', this.noteMiss);
    window.removeEventListener('unhandledrejection', this.missed);
  }

  private readonly noteMiss = (event: Event & { readonly payload?: object }) => { if (event.payload !== undefined) this.misses.add(event.payload); };

  /** A part that nobody else tells of. */
  private readonly missed = (event: PromiseRejectionEvent) => {
    if (typeof event.reason !== 'object' || event.reason === null || !this.misses.has(event.reason as object)) return;
    event.preventDefault();
    this.says = 'missed';
  };

  /** Fetched by itself: the first screen does not wait for it. */
  private async register(): Promise<void> {
    const isFirst = navigator.serviceWorker.controller === null;
    navigator.serviceWorker.addEventListener('controllerchange', () => { if (!isFirst) this.replaced(); });
    const { registerSW } = await import('virtual:pwa-register');
    const update = registerSW({
      onOfflineReady: () => { this.says = 'ready'; },
      onNeedRefresh: () => { this.says = 'newer'; },
      // Loaded anew by whoever was asked, below.
      onNeedReload: () => undefined,
      // A page that may keep nothing may not work offline either: it works all the same while the network is there.
      onRegisterError: () => undefined,
    });
    this.takeNewer = () => void update(false);
  }

  private replaced(): void {
    if (this.wasAsked) location.reload();
    else this.says = 'replaced';
  }

  /** Takes the newer page, once nothing would be lost by it. */
  private async take(): Promise<void> {
    const isMissed = this.says === 'missed';
    if (!(await readyToReload())) {
      this.says = 'not yet';
      return;
    }
    this.wasAsked = true;
    const waiting = (await navigator.serviceWorker.getRegistration())?.waiting ?? null;
    if (waiting === null || isMissed) {
      location.reload();
      return;
    }
    // A page that began before the first worker has no controller to change.
    waiting.addEventListener('statechange', () => { if (waiting.state === 'activated') this.replaced(); });
    this.takeNewer();
  }

  override render(): TemplateResult | typeof nothing {
    if (this.says === 'nothing') return nothing;
    const take = html`<button type="button" class="plain" @click=${() => void this.take()}>${this.says === 'replaced' || this.says === 'missed' ? words.offline.again : words.offline.take}</button>`;
    const dismiss = html`<button type="button" class="plain" @click=${() => { this.says = 'nothing'; }}>${words.offline.later}</button>`;
    if (this.says === 'ready') return html`<p class="notice screen" role="status">${words.offline.ready} ${dismiss}</p>`;
    const text = { newer: words.offline.newer, 'not yet': words.offline.notYet, replaced: words.offline.replaced, missed: words.start.notLoaded }[this.says];
    return html`<p class="notice newer screen" role="status">${text} ${take} ${dismiss}</p>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-offline-notice': OfflineNotice;
  }
}
