import { html, nothing, type TemplateResult } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import '@seatwright/elements/seat-bore-record.define.js';
import '@seatwright/elements/seat-lip-speed.define.js';
import '@seatwright/elements/seat-warmth.define.js';
import '@seatwright/elements/seat-zones.define.js';
import type { LipLimit } from '@seatwright/elements/seat-lip-speed.js';
import type { ZonePart } from '@seatwright/elements/seat-zones.js';
import { serviceRecord, type SealOutcome, type ServiceRecordOutput } from '@seatwright/core/job';
import { CalculationError } from '@seatwright/core/result';
import { boreBandOf, lipSpeedLimits, type Situation } from '@seatwright/core/seal';
import { wordFor, type WritingStyle } from '@seatwright/core/wording';
import { PageElement } from '../page-element.js';
import { words } from '../words/index.js';
import { sentences } from '../words/sentences.js';

/** What the sheet says of one seal, drawn: limits and readings, hold against heat, speed against its limits, the bore over its renewals. */
@customElement('bench-charts')
export class BenchCharts extends PageElement {
  @property({ attribute: false }) seal: SealOutcome | null = null;
  /** The workshop file with this position alone. */
  @property({ attribute: false }) workshop: unknown = null;
  @property({ attribute: false }) writing: WritingStyle = { lengthUnit: 'mm', decimalMark: '.' };

  override render(): TemplateResult | typeof nothing {
    const { seal, writing } = this;
    if (seal === null) return nothing;
    const situation = seal.situation as Situation;
    const nominalMm = situation.bore?.diameterMm ?? situation.seal.outsideMm;
    const record = this.record();
    return html`<div class="charts">
      <seat-zones .nominalMm=${nominalMm} .parts=${zonesOf(seal, situation, nominalMm)} .writing=${writing}></seat-zones>
      <seat-warmth .check=${seal.check} .temperatureC=${situation.running?.housingTemperatureC ?? situation.running?.fluidTemperatureC ?? null} .writing=${writing}></seat-warmth>
      <seat-lip-speed .shaftDiameterMm=${seal.check?.shaft?.meanMm ?? situation.seal.shaftMm} .speedRpm=${situation.running?.speedRpm ?? null} .limits=${limitsOf(situation)} .writing=${writing}></seat-lip-speed>
      ${record === null || record.changes.every(({ boreMm }) => boreMm === null) ? nothing : html`<seat-bore-record .record=${record} .writing=${writing}></seat-bore-record>`}
    </div>`;
  }

  /** The record of the position; null where it cannot be read, which the findings say. */
  private record(): ServiceRecordOutput | null {
    try {
      return serviceRecord.run({ workshop: this.workshop });
    } catch (error) {
      if (error instanceof CalculationError) return null;
      throw error;
    }
  }
}

/** `bore H8`; a band that is named after what it limits stands for itself. */
function nameOfBand(label: string): string {
  return label.includes(' ') ? wordFor(label, sentences) : `${words.charts.bore} ${label}`;
}

function zonesOf({ check }: SealOutcome, situation: Situation, nominalMm: number): readonly ZonePart[] {
  const um = (mm: number) => (mm - nominalMm) * 1000;
  const parts: ZonePart[] = [];
  try {
    const band = boreBandOf(situation.requirementSet ?? 'iso-6194-1', nominalMm);
    const bore = check?.bore ?? null;
    parts.push({ name: nameOfBand(band.label), lowerUm: band.lowerMm * 1000, upperUm: band.upperMm * 1000, ...(bore === null ? {} : { read: { lowUm: um(bore.smallestMm), highUm: um(bore.largestMm), uncertaintyUm: bore.expandedUncertaintyMm * 1000 } }) });
  } catch (error) {
    if (!(error instanceof CalculationError)) throw error;
  }
  const outside = check?.sealOutsideMm ?? null;
  if (outside !== null) parts.push({ name: words.charts.seal, lowerUm: um(outside.low), upperUm: um(outside.high) });
  return parts;
}

/** The limits that the lip's speed is judged by; none where the tables do not reach. */
function limitsOf({ seal }: Situation): readonly LipLimit[] {
  try {
    return lipSpeedLimits(seal.lipMaterial, seal.shaftMm).map(({ of, limitMps, source }) => ({ name: of === 'any' ? words.charts.generalLimit : of, limitMps, source }));
  } catch (error) {
    if (error instanceof CalculationError) return [];
    throw error;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-charts': BenchCharts;
  }
}
