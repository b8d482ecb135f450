import { property } from 'lit/decorators.js';
import type { ServiceRecordOutput } from '@seatwright/core/job';
import type { ChartOrWhy } from '../internal/chart/chart-data.js';
import { ChartElement } from '../internal/chart/chart-element.js';
import { boreRecordData } from './bore-record-data.js';

/**
 * The bore at each renewal with the doubt of its reading, its limit, and how it goes on if the wear does.
 * @csspart chart - the drawing with its title and key
 */
export class SeatBoreRecord extends ChartElement {
  /** What `service-record` says. */
  @property({ attribute: false }) record: Pick<ServiceRecordOutput, 'changes' | 'boreTrend'> | null = null;

  protected override data(): ChartOrWhy {
    return boreRecordData(this.record, this.words, this.writing);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'seat-bore-record': SeatBoreRecord;
  }
}
