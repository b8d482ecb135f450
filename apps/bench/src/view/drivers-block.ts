import { html, nothing, type TemplateResult } from 'lit';
import type { BearingDriverOutput, DriverSearchOutput } from '@seatwright/core/handwork';
import type { DriverDraw } from '../beside/bench-drivers.js';
import { withPlaceAlone } from '../document/places.js';
import { withoutUnfinished } from '../document/without-unfinished.js';
import { words } from '../words/index.js';
import { opening } from './fetched-fold.js';
import type { SheetContext } from './sheet-context.js';

interface Block {
  readonly search: DriverSearchOutput | BearingDriverOutput | null;
  readonly situation: unknown;
  readonly context: SheetContext;
  /** Name of the driver that is drawn. */
  readonly drawn: string;
  readonly draw: (name: string) => void;
}

/** Two drivers beside each other: folded, and fetched when it is opened. */
export function driversBlock({ search, situation, context, drawn, draw }: Block): TemplateResult | typeof nothing {
  if (search === null) return nothing;
  return html`<details class="another wide" @toggle=${opening(() => import('../beside/bench-drivers.js'))}>
    <summary>${words.drivers.heading}</summary>
    <bench-drivers .search=${search} .situation=${situation} .workshop=${withoutUnfinished(withPlaceAlone(context.document, context.place))} .drawn=${drawn} .writing=${context.style} @drivers-draw=${({ detail }: CustomEvent<DriverDraw>) => { draw(detail.name); }}></bench-drivers>
  </details>`;
}
