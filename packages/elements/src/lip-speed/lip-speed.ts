import { property } from 'lit/decorators.js';
import { english, type Catalogue } from '@seatwright/core/wording';
import type { ChartOrWhy } from '../internal/chart/chart-data.js';
import { ChartElement } from '../internal/chart/chart-element.js';
import { lipSpeedData, type LipLimit } from './lip-speed-data.js';

export type { LipLimit } from './lip-speed-data.js';

/**
 * The speed under the lip against the speed of the shaft, with the limits of rubbers and of the standard, and where this job stands.
 * @csspart chart - the drawing with its title and key
 */
export class SeatLipSpeed extends ChartElement {
  /** Diameter of the shaft under the lip, in mm. */
  @property({ type: Number, attribute: 'shaft-diameter-mm' }) shaftDiameterMm: number | null = null;
  /** Speed of the shaft, in rpm. */
  @property({ type: Number, attribute: 'speed-rpm' }) speedRpm: number | null = null;
  /** Sentences about findings, steps and values. */
  @property({ attribute: false }) catalogue: Catalogue = english;
  /** Limits to be drawn, each with its name and where it comes from. */
  @property({ attribute: false }) limits: readonly LipLimit[] = [];

  constructor() {
    super(english);
  }

  protected override data(): ChartOrWhy {
    return lipSpeedData(this.shaftDiameterMm, this.speedRpm, this.limits, this.words, this.catalogue, this.writing);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'seat-lip-speed': SeatLipSpeed;
  }
}
