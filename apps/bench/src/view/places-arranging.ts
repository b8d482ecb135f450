import { nothing, type ReactiveControllerHost, type TemplateResult } from 'lit';
import type { ChangedPlaces } from '../document/change-places.js';
import type { Place } from '../document/places.js';
import type { Json, JsonObject, Path } from '../document/raw-document.js';
import type { placesPanel } from './places-panel.js';

/** What is done with the places that were arranged. */
interface ArrangingActions {
  change(path: Path, value: Json | undefined): void;
  rearrange(next: ChangedPlaces): void;
  open(place: Place): void;
}

/** Machines and positions, where they are added, renamed and taken away: shown when they are asked for, and what shows them fetched then. */
export class PlacesArranging {
  /** What was done there last; null while they are not shown. */
  private news: string | null = null;
  private panel: typeof placesPanel | null = null;
  private readonly host: ReactiveControllerHost & HTMLElement;
  private readonly actions: ArrangingActions;

  constructor(host: ReactiveControllerHost & HTMLElement, actions: ArrangingActions) {
    this.host = host;
    this.actions = actions;
  }

  /** Shows them, or puts them away. */
  async toggle(): Promise<void> {
    if (this.news !== null) {
      this.close();
      return;
    }
    this.panel ??= (await import('./places-panel.js')).placesPanel;
    this.say('');
    await this.host.updateComplete;
    this.host.querySelector('.places-panel')?.scrollIntoView({ block: 'start' });
  }

  close(): void {
    this.news = null;
    this.host.requestUpdate();
  }

  /** What was said last holds no longer. */
  silence(): void {
    if (this.news !== null) this.say('');
  }

  render(document: JsonObject, place: Place): TemplateResult | typeof nothing {
    if (this.news === null || this.panel === null) return nothing;
    return this.panel({ document, place, news: this.news }, {
      change: (path, value) => { this.actions.change(path, value); },
      say: (news) => { this.say(news); },
      rearrange: (next, news, focus = `position-${next.place.machine}-${next.place.position}`) => {
        this.actions.rearrange(next);
        this.say(news);
        void this.host.updateComplete.then(() => { this.host.querySelector<HTMLElement>(`#${focus}`)?.focus(); });
      },
      open: (to) => {
        this.close();
        this.actions.open(to);
        window.scrollTo(0, 0);
      },
      close: () => { this.close(); },
    });
  }

  private say(news: string): void {
    this.news = news;
    this.host.requestUpdate();
  }
}
