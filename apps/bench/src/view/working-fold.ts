import { html, nothing, type ReactiveControllerHost, type TemplateResult } from 'lit';
import type { WorkingStep } from '@seatwright/core/result';
import { whenIdle } from '../when-idle.js';
import { words } from '../words/index.js';
import type { SheetContext } from './sheet-context.js';

/** The working, folded away: written when it is opened, and anew for another result while it is open, once the page has nothing better to do. */
export class WorkingFold {
  private steps: readonly WorkingStep[] | null = null;
  private isOpen = false;
  /** It is to be written anew. */
  private isBehind = false;
  private readonly host: ReactiveControllerHost;
  private readonly write: () => readonly WorkingStep[] | null;
  private readonly fetch: () => void;

  /** @param write the working of the result as it stands; null where there is none, or what writes it is still to be fetched
   * @param fetch fetches that, and asks for another result then */
  constructor(host: ReactiveControllerHost, write: () => readonly WorkingStep[] | null, fetch: () => void) {
    this.host = host;
    this.write = write;
    this.fetch = fetch;
  }

  /** Another result: what is open follows; what cannot be written stays as it was. */
  follow(): void {
    if (!this.isOpen || this.isBehind) return;
    this.isBehind = true;
    whenIdle(() => {
      this.isBehind = false;
      if (this.isOpen) this.writeAnew();
    });
  }

  private writeAnew(): void {
    this.steps = this.write() ?? this.steps;
    this.host.requestUpdate();
  }

  /** Another place is looked at. */
  close(): void {
    this.isOpen = false;
    this.steps = null;
  }

  render({ output, style }: SheetContext): TemplateResult | typeof nothing {
    if (output === null) return nothing;
    return html`<details class="working" @toggle=${(event: Event) => { this.toggle((event.currentTarget as HTMLDetailsElement).open); }}>
      <summary>${words.working}</summary>
      ${this.steps === null ? nothing : html`<seat-working decimal-mark=${style.decimalMark} .steps=${this.steps}></seat-working>`}
    </details>`;
  }

  private toggle(isOpen: boolean): void {
    if (!isOpen) {
      this.close();
      this.host.requestUpdate();
      return;
    }
    this.isOpen = true;
    void import('@seatwright/elements/seat-working.define.js');
    this.writeAnew();
    if (this.steps === null) this.fetch();
  }
}
