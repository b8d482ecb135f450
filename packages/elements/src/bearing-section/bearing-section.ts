import { svg, type CSSResultGroup, type SVGTemplateResult } from 'lit';
import { property } from 'lit/decorators.js';
import type { BearingRemovalOutput, BearingSeatOutput } from '@seatwright/core/bearing';
import { fill } from '@seatwright/core/wording';
import type { Callout, CalloutOptions } from '../section/internal/callouts.js';
import type { SectionDimension } from '../section/internal/dimensions.js';
import { sealCallouts } from '../section/internal/draw-dimensions.js';
import { drawDrill } from '../section/internal/draw-drill.js';
import { drawDriver } from '../section/internal/draw-driver.js';
import { drawSeal } from '../section/internal/draw-seal.js';
import type { SectionExtent, SectionLayout } from '../section/internal/section-layout.js';
import { SeatSection, slidIn, type SectionDetail } from '../section/section.js';
import { styles } from './bearing-section.styles.js';
import { bearingCallouts, bearingDimensionsOf } from './internal/bearing-callouts.js';
import { bearingGeometry, isBearingMode, type BearingGeometry, type BearingPusher, type SectionBearing } from './internal/bearing-geometry.js';
import { drawBearing } from './internal/draw-bearing.js';
import { drawPuller } from './internal/draw-puller.js';
import { drawPusher } from './internal/draw-pusher.js';
import { drawHousingOf, drawShaftOf } from './internal/draw-surroundings.js';
import { seatMarksOf } from './internal/seat-marks.js';

export type { BearingPusher, SectionBearing } from './internal/bearing-geometry.js';

/**
 * The half section of a place with a bearing: alone, or behind its seal. Both seats are magnified; what pushes it home stands on the ring that takes the push, and the puller grips where the plan says.
 * The modes `bearing in` and `bearing out` show the bearing's own work, without the seal.
 */
export class SeatBearingSection extends SeatSection {
  static override styles: CSSResultGroup = [SeatSection.styles, styles];

  /** The bearing and its seats as they are asked about. */
  @property({ attribute: false }) bearing: SectionBearing | null = null;
  /** What `bearing-seat` says of them. */
  @property({ attribute: false }) seats: BearingSeatOutput | null = null;
  /** What `bearing-removal` says: by which ring it is gripped. */
  @property({ attribute: false }) removal: BearingRemovalOutput | null = null;
  /** What pushes the bearing home, to be drawn on its ring. */
  @property({ attribute: false }) bearingDriver: BearingPusher | null = null;

  protected override geometry(): BearingGeometry {
    return bearingGeometry(this);
  }

  protected override extent(geometry: BearingGeometry): SectionExtent {
    const { bearing, depthMm, shaftMm, boreMm } = geometry;
    const hasSeal = this.hasSeal;
    return {
      innerRadiusMm: Math.min(bearing.boreMm, hasSeal ? shaftMm : Infinity) / 2,
      outerRadiusMm: Math.max(bearing.outsideMm, hasSeal ? boreMm : 0) / 2,
      outMm: Math.max(hasSeal ? -depthMm : 0, -bearing.faceMm, 0),
      reachMm: Math.max(bearing.faceMm, 0) + bearing.widthMm * (bearing.grip === null ? 1.3 : 1.5),
      rightPx: hasSeal ? 104 : 62,
    };
  }

  protected override dimensions(geometry: BearingGeometry): readonly SectionDimension[] {
    const own = bearingDimensionsOf(geometry, this.bearing, this.words.section);
    const all = super.dimensions(geometry);
    return !this.hasSeal ? [...own, ...all.filter(({ name }) => name.startsWith('driver-'))] : [...all, ...own];
  }

  protected override callouts(geometry: BearingGeometry, layout: SectionLayout, dimensions: readonly SectionDimension[], options: CalloutOptions): readonly Callout[] {
    const ofSeal = geometry.hasSeal ? sealCallouts(geometry, layout, dimensions.filter(({ name }) => !name.startsWith('bearing-')), options, 74) : [];
    return [...ofSeal, ...bearingCallouts(geometry, layout, geometry.hasSeal ? dimensions : dimensions.filter(({ name }) => name !== 'room'), options, !geometry.hasSeal)];
  }

  protected override parts(geometry: BearingGeometry, layout: SectionLayout): SVGTemplateResult {
    const tools = { 'as driven': drawDriver, 'taking out': drawDrill, 'bearing in': drawPusher, 'bearing out': drawPuller };
    const tool = tools[geometry.mode](geometry, layout);
    return svg`${drawHousingOf(geometry, layout)}
      ${drawShaftOf(geometry, layout)}
      ${drawBearing(geometry.bearing, layout)}
      ${geometry.hasSeal ? drawSeal(geometry, layout) : ''}
      ${slidIn(geometry, tool)}`;
  }

  protected override details(geometry: BearingGeometry, layout: SectionLayout): readonly SectionDetail[] {
    const { faceMm, widthMm, boreMm, outsideMm } = geometry.bearing;
    const words = this.words.section.bearing;
    const x = layout.x(faceMm + widthMm * 0.8);
    const inner = seatMarksOf('shaft', this.bearing, this.seats, this.words.section);
    const outer = seatMarksOf('housing', this.bearing, this.seats, this.words.section);
    const ofSeal = geometry.hasSeal ? super.details(geometry, layout) : [];
    const next = (at: number) => String.fromCharCode(65 + at);
    const ofBearing: SectionDetail[] = [];
    if (outer !== null) ofBearing.push({ letter: next(ofSeal.length), name: words.outerRing, marks: outer, hatches: ['housing', 'ring'], x, y: layout.y(outsideMm / 2), isBelow: false });
    if (inner !== null) ofBearing.push({ letter: next(ofSeal.length + ofBearing.length), name: words.innerRing, marks: inner, hatches: ['ring', 'driver'], x, y: layout.y(boreMm / 2), isBelow: true });
    return [...ofSeal.map((detail) => ({ ...detail, name: words.sealInBore })), ...ofBearing];
  }

  protected override spoken(geometry: BearingGeometry): string {
    const words = this.words.section.bearing;
    const { boreMm, outsideMm, widthMm, closure, isRoller } = geometry.bearing;
    const sizes = this.isBearingStandIn(geometry) ? words.standIn : fill(words.spoken, { boreMm, outsideMm, widthMm }, this.catalogue, this.lengthStyle);
    const form = [isRoller ? words.rollers : words.balls, ...(closure === 'shields' || closure === 'seals' ? [words[closure]] : [])].join(', ');
    const work = isBearingMode(geometry.mode) && !this.isBearingStandIn(geometry) ? this.work(geometry) : '';
    return `${geometry.hasSeal ? super.spoken(geometry) : `${words.title}.`} ${sizes} ${form}. ${work}`.trim();
  }

  protected override isStandIn(geometry: BearingGeometry): boolean {
    return geometry.hasSeal ? super.isStandIn(geometry) : this.isBearingStandIn(geometry);
  }

  protected override what(geometry: BearingGeometry): string {
    const words = this.words.section.bearing;
    const { isFaceKnown, shaft, housing } = geometry.bearing;
    if (!geometry.hasSeal && this.isBearingStandIn(geometry)) return words.standIn;
    const guessed = !isFaceKnown || [...shaft, ...housing].some(({ isGuess }) => isGuess) ? ` ${words.brokenLines}` : '';
    if (isBearingMode(geometry.mode)) return `${this.work(geometry)}${guessed}`;
    return geometry.hasSeal ? `${super.what(geometry)}${guessed}` : guessed.trim();
  }

  /** What is done to the bearing. */
  private work({ mode, driver, bearing: { grip } }: BearingGeometry): string {
    const words = this.words.section.bearing;
    if (mode === 'bearing in') return `${words.in} ${this.drivenBy(driver)}`;
    return grip === null ? words.out : `${words.out} ${words.grips[grip]}`;
  }

  private get hasSeal(): boolean {
    return this.situation?.seal !== undefined;
  }

  private isBearingStandIn({ bearing: { known } }: BearingGeometry): boolean {
    return !(known.bore && known.outside && known.width);
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'seat-bearing-section': SeatBearingSection;
  }
}
