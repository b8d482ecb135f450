import { property } from 'lit/decorators.js';
import type { fitDistribution } from '@seatwright/core/measure';
import type { ChartOrWhy } from '../internal/chart/chart-data.js';
import { ChartElement } from '../internal/chart/chart-element.js';
import { spreadData } from './spread-data.js';

/**
 * How a fit comes out over many parts: which clearances are likely, and which share is loose or tight.
 * @csspart chart - the drawing with its title and key
 */
export class SeatSpread extends ChartElement {
  /** What `fit-distribution` says. */
  @property({ attribute: false }) distribution: Pick<ReturnType<typeof fitDistribution.compute>, 'exact'> | null = null;

  protected override data(): ChartOrWhy {
    return spreadData(this.distribution, this.words, this.writing);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'seat-spread': SeatSpread;
  }
}
