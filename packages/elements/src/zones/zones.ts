import { property } from 'lit/decorators.js';
import { english, type Catalogue } from '@seatwright/core/wording';
import type { ChartOrWhy } from '../internal/chart/chart-data.js';
import { ChartElement } from '../internal/chart/chart-element.js';
import { zonesData, type ZonePart } from './zones-data.js';

export type { ZonePart } from './zones-data.js';

/**
 * The tolerance zones of the parts of a fit above and below their nominal size, with what was measured and its doubt.
 * @csspart chart - the drawing with its title and key
 */
export class SeatZones extends ChartElement {
  /** Nominal size that the parts share, in mm. */
  @property({ type: Number, attribute: 'nominal-mm' }) nominalMm: number | null = null;
  /** The parts: name, lower and upper limit deviation in µm, and readings if there are any. */
  @property({ attribute: false }) parts: readonly ZonePart[] = [];
  /** Sentences about findings, steps and values. */
  @property({ attribute: false }) catalogue: Catalogue = english;

  constructor() {
    super(english);
  }

  protected override data(): ChartOrWhy {
    return zonesData(this.nominalMm, this.parts, this.words, this.catalogue, this.writing);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'seat-zones': SeatZones;
  }
}
