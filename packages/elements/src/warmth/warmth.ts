import { property } from 'lit/decorators.js';
import type { SealCheckOutput } from '@seatwright/core/seal';
import { english, type Catalogue } from '@seatwright/core/wording';
import type { ChartOrWhy } from '../internal/chart/chart-data.js';
import { ChartElement } from '../internal/chart/chart-element.js';
import { warmthData } from './warmth-data.js';

/**
 * What holds a seal's metal case in its bore, against the temperature of the housing, and where it is loose.
 * @csspart chart - the drawing with its title and key
 */
export class SeatWarmth extends ChartElement {
  /** What `seal-check` says of the place. */
  @property({ attribute: false }) check: Pick<SealCheckOutput, 'heldUm' | 'looseFromC' | 'findings'> | null = null;
  /** Temperature of the housing while running, in °C. */
  @property({ type: Number, attribute: 'temperature-c' }) temperatureC: number | null = null;
  /** Sentences about findings, steps and values. */
  @property({ attribute: false }) catalogue: Catalogue = english;

  constructor() {
    super(english);
  }

  protected override data(): ChartOrWhy {
    return warmthData(this.check, this.temperatureC, this.words, this.catalogue, this.writing);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'seat-warmth': SeatWarmth;
  }
}
