import { html, nothing, svg, type CSSResultGroup, type SVGTemplateResult, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { DirectiveResult } from 'lit/directive.js';
import { keyed } from 'lit/directives/keyed.js';
import type { ExtractionPlanOutput, SeatingPlanOutput } from '@seatwright/core/handwork';
import type { SealCheckOutput } from '@seatwright/core/seal';
import { wordFor, writeValue } from '@seatwright/core/wording';
import { foldStyles } from '../internal/fold-styles.js';
import { SentenceElement } from '../internal/sentence-element.js';
import { tokens } from '../internal/tokens.js';
import type { Callout, CalloutOptions } from './internal/callouts.js';
import { describeSection } from './internal/describe-section.js';
import { dimensionsOf, type LengthStyle, type SectionDimension } from './internal/dimensions.js';
import { drawBehind } from './internal/draw-behind.js';
import { drawDimensions, sealCallouts, settleDimensions, type SettledDimensions } from './internal/draw-dimensions.js';
import { drawDrill } from './internal/draw-drill.js';
import { drawDriver, drawPushTube } from './internal/draw-driver.js';
import { drawGap, gapHeightOf } from './internal/draw-gap.js';
import { drawHousing } from './internal/draw-housing.js';
import { drawSeal } from './internal/draw-seal.js';
import { drawShaft } from './internal/draw-shaft.js';
import { gapMarksOf, type GapMarks } from './internal/gap-marks.js';
import { hatchings } from './internal/path.js';
import { sectionGeometry, type SectionDriver, type SectionGeometry, type SectionMode, type SectionSituation } from './internal/section-geometry.js';
import { extentOf, type SectionExtent, type SectionLayout } from './internal/section-layout.js';
import { styles } from './section.styles.js';

export type { SectionDriver, SectionMode, SectionSituation } from './internal/section-geometry.js';

/** A tap on a dimension: which one, and the entry it stands for. */
export interface SectionTap {
  readonly name: string;
  readonly path: string;
}

/**
 * A half section to scale through shaft, seal, bore, what lies behind and what drives or draws it, with its dimensions and a magnified detail at the bore.
 * @fires seat-dimension - somebody tapped a dimension that can be entered; detail `{ name, path }`
 * @csspart drawing - the section, an SVG
 * @csspart detail - the magnified detail, an SVG
 */
export class SeatSection extends SentenceElement {
  static override styles: CSSResultGroup = [tokens, foldStyles, styles];

  /** Shaft, bore, seal and seat as they are asked about. */
  @property({ attribute: false }) situation: SectionSituation | null = null;
  /** What `seal-check` says of them. */
  @property({ attribute: false }) check: SealCheckOutput | null = null;
  /** What `extraction-plan` says: drawn while taking out. */
  @property({ attribute: false }) extraction: ExtractionPlanOutput | null = null;
  /** What `seating-plan` says: where the seal ends. */
  @property({ attribute: false }) seating: SeatingPlanOutput | null = null;
  /** The driver to be drawn at its end position. */
  @property({ attribute: false }) driver: SectionDriver | null = null;
  /** As driven in, or while the old one is taken out. */
  @property() mode: SectionMode = 'as driven';
  /** Unit that lengths are shown in. */
  @property({ attribute: 'length-unit' }) lengthUnit: 'mm' | 'in' = 'mm';
  /** Decimal mark of the numbers shown. */
  @property({ attribute: 'decimal-mark' }) decimalMark: '.' | ',' = '.';
  /** Name of the dimension to light up. */
  @property() highlight = '';
  /** A low drawing without detail, for a place that stays in view while one scrolls. */
  @property({ type: Boolean, reflect: true }) compact = false;
  /** Leaves out the table, where a page shows the sizes itself. */
  @property({ type: Boolean, attribute: 'without-table' }) withoutTable = false;
  /** Leaves out the magnified detail. */
  @property({ type: Boolean, attribute: 'without-detail' }) withoutDetail = false;
  /** Width of the paper in px; 0 follows the place the element is in. */
  @property({ type: Number, attribute: 'draw-width' }) drawWidth = 0;

  @state() private measuredWidth = 0;
  @state() private isNear = false;
  /** Measures labels in the font of this place; null before that is known. */
  @state() private ruler: CanvasRenderingContext2D | null = null;
  private rulerFamily = '';

  private readonly observer = new ResizeObserver((entries) => {
    this.takeRuler();
    const width = Math.round(entries.at(-1)?.contentRect.width ?? 0);
    if (width > 0 && Math.abs(width - this.measuredWidth) > 1) this.measuredWidth = width;
  });

  override connectedCallback(): void {
    super.connectedCallback();
    this.takeRuler();
    this.observer.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.observer.disconnect();
  }

  override render(): TemplateResult {
    const width = Math.max(this.drawWidth > 0 ? this.drawWidth : this.measuredWidth > 0 ? this.measuredWidth : 358, 260);
    const geometry = this.geometry();
    const dimensions = this.dimensions(geometry);
    const options = { words: this.words.section, style: this.lengthStyle, highlight: this.highlight, tap: (dimension: SectionDimension) => { this.tap(dimension); } };
    const settled = settleDimensions(this.extent(geometry), { width, isCompact: this.compact }, this.highlight, (layout) => this.callouts(geometry, layout, dimensions, options));
    const { layout } = settled;
    const details = this.compact || this.withoutDetail ? [] : this.details(geometry, layout);
    return html`<figure>
      ${this.drawing(geometry, settled, details)}
      ${details.map((detail) => this.detail(detail, layout))}
      ${details.length === 0 ? nothing : html`<button type="button" class="nearer" aria-pressed=${this.isNear ? 'true' : 'false'} @click=${() => { this.isNear = !this.isNear; }}>${this.words.section.nearer}</button>`}
      ${this.compact ? nothing : this.caption(geometry, layout, details)}
      ${this.compact || this.withoutTable ? nothing : this.table(dimensions)}
    </figure>`;
  }

  protected get lengthStyle(): LengthStyle {
    return { lengthUnit: this.lengthUnit, decimalMark: this.decimalMark };
  }

  /** What is drawn, in mm. */
  protected geometry(): SectionGeometry {
    return sectionGeometry(this);
  }

  /** How far it reaches. */
  protected extent(geometry: SectionGeometry): SectionExtent {
    return extentOf(geometry);
  }

  protected dimensions(geometry: SectionGeometry): readonly SectionDimension[] {
    return dimensionsOf(geometry, this.words.section);
  }

  protected callouts(geometry: SectionGeometry, layout: SectionLayout, dimensions: readonly SectionDimension[], options: CalloutOptions): readonly Callout[] {
    return sealCallouts(geometry, layout, dimensions, options);
  }

  /** The parts, from the back to the front. */
  protected parts(geometry: SectionGeometry, layout: SectionLayout): SVGTemplateResult {
    const tool = geometry.mode !== 'taking out' ? drawDriver(geometry, layout) : geometry.pushTube === null ? drawDrill(geometry, layout) : drawPushTube(geometry, layout);
    return svg`${drawHousing(geometry, layout)}
      ${drawShaft(geometry, layout)}
      ${drawBehind(geometry, layout)}
      ${drawSeal(geometry, layout)}
      ${slidIn(geometry, tool)}`;
  }

  /** The joints that are magnified, with their letters. */
  protected details(geometry: SectionGeometry, { x, y }: SectionLayout): readonly SectionDetail[] {
    const { depthMm, widthMm, boreMm, outsideMm } = geometry;
    const marks = gapMarksOf(this.check, outsideMm, this.words.section);
    return marks === null ? [] : [{ letter: 'A', name: '', marks, hatches: ['housing', 'steel'], x: x(depthMm + widthMm * 0.62), y: y(boreMm / 2) }];
  }

  protected spoken(geometry: SectionGeometry): string {
    return `${this.words.section.title}. ${describeSection(geometry, this.extraction, this.words.section, this.catalogue, this.lengthStyle)}`;
  }

  protected isStandIn({ known }: SectionGeometry): boolean {
    return !(known.shaft && known.bore && known.width);
  }

  /** What is drawn, in a few words. */
  protected what(geometry: SectionGeometry): string {
    const words = this.words.section;
    if (this.isStandIn(geometry)) return words.standIn;
    return geometry.mode === 'taking out' ? words.takingOut : `${words.asDriven} ${this.drivenBy(geometry.driver)}`;
  }

  /** What drives it in, by name. */
  protected drivenBy(driver: { readonly name: string } | null): string {
    const words = this.words.section;
    return driver === null ? words.spokenNoDriver : words.drivenBy.replace('{name}', () => wordFor(driver.name, this.catalogue));
  }

  private drawing(geometry: SectionGeometry, settled: SettledDimensions, details: readonly SectionDetail[]): TemplateResult {
    const { layout } = settled;
    return html`<svg part="drawing" role="img" aria-label=${this.spoken(geometry)} viewBox="0 0 ${layout.width} ${layout.height}" width=${layout.width} height=${layout.height}>
      ${hatchings()}
      ${this.parts(geometry, layout)}
      ${details.map((detail) => this.detailMark(detail))}
      ${drawDimensions(settled)}
    </svg>`;
  }

  private detail({ letter, name, marks, hatches }: SectionDetail, layout: SectionLayout): TemplateResult {
    const drawing = drawGap(marks, { letter, hatches, width: layout.width, isNear: this.isNear, measure: (text) => this.lengthOf(text), sectionPxPerMm: layout.pxPerMm, words: this.words.section, style: this.lengthStyle });
    return html`<svg part="detail" data-detail=${letter} role="img" aria-label="${name === '' ? '' : `${name}: `}${this.detailText(marks)}" viewBox="0 0 ${layout.width} ${gapHeightOf(this.isNear)}" width=${layout.width} height=${gapHeightOf(this.isNear)}>${hatchings()}${drawing}</svg>`;
  }

  /** The ring around the place that a detail enlarges, with its letter; a tap brings the detail into sight, nearer. */
  private detailMark({ letter, x, y, isBelow = false }: SectionDetail): SVGTemplateResult {
    return svg`<g class="tappable" @click=${() => void this.show(letter)}><circle class="hit" cx=${x} cy=${y} r="24"></circle><circle class="mark-ring" cx=${x} cy=${y} r="11"></circle><text class="mark-letter" x=${x + 15} y=${isBelow ? y + 19 : y - 9}>${letter}</text></g>`;
  }

  private async show(letter: string): Promise<void> {
    this.isNear = true;
    await this.updateComplete;
    this.renderRoot.querySelector(`[data-detail="${letter}"]`)?.scrollIntoView({ block: 'nearest', behavior: matchMedia('(prefers-reduced-motion: reduce)').matches ? 'auto' : 'smooth' });
  }

  /** Takes the font of this place. Asked while nothing waits to be laid out, since asking while drawing would lay out the page once more for each key. */
  private takeRuler(): void {
    const family = getComputedStyle(this).fontFamily;
    if (family === this.rulerFamily) return;
    this.rulerFamily = family;
    this.ruler = document.createElement('canvas').getContext('2d');
    if (this.ruler !== null) this.ruler.font = `400 12.5px ${family}`;
  }

  /** How long a label is in the font of this place [px]. */
  private lengthOf(text: string): number {
    return this.ruler === null ? text.length * 6.9 : this.ruler.measureText(text).width + 1;
  }

  private detailText({ interference, outer }: GapMarks): string {
    const words = this.words.section;
    if (interference === null) return outer.read === null ? words.notMeasured : words.detail;
    const um = (value: number) => writeValue('valueUm', Math.abs(value), this.lengthStyle);
    const { lowUm, highUm } = interference;
    if (highUm <= 0) return `${words.gap}: ${um(highUm)} ${words.upTo} ${um(lowUm)} ${words.onDiameter}`;
    if (lowUm < 0) return words.gapToHold.replace('{gap}', um(lowUm)).replace('{hold}', um(highUm));
    return `${words.hold}: ${um(lowUm)} ${words.upTo} ${um(highUm)} ${words.onDiameter}`;
  }

  private caption(geometry: SectionGeometry, layout: SectionLayout, details: readonly SectionDetail[]): TemplateResult {
    const words = this.words.section;
    const barMm = this.lengthUnit === 'in' ? 12.7 : 10;
    const barPx = barMm * layout.pxPerMm;
    return html`<figcaption>
      <span class="chosen">${this.what(geometry)}</span>
      ${details.filter(({ marks }) => marks.interference !== null).map(({ letter, name, marks }) => html`<span>${name === '' ? '' : html`<b>${letter}</b> ${name}: `}${this.detailText(marks)}</span>`)}
      <span>${this.lengthUnit === 'in' ? words.inInches : words.inMm}${this.isStandIn(geometry) ? nothing : html`, ${words.scaleBar}: <span class="scale"><svg class="bar" aria-hidden="true" width=${barPx + 2} height="9" viewBox="0 0 ${barPx + 2} 9"><path class="thin" d="M1 1V8M1 4.5H${barPx + 1}M${barPx + 1} 1V8"></path></svg> ${this.lengthUnit === 'in' ? '1/2\u00a0in' : '10\u00a0mm'}</span>`}</span>
    </figcaption>`;
  }

  private table(dimensions: readonly SectionDimension[]): TemplateResult {
    const words = this.words.section;
    return html`<details>
      <summary>${words.dimensions}</summary>
      <table>
        <thead><tr><th scope="col">${words.dimension}</th><th scope="col">${words.value}</th></tr></thead>
        <tbody>
          ${dimensions.map((dimension) => this.tableRow(dimension))}
        </tbody>
      </table>
    </details>`;
  }

  /** By keyboard a dimension leads to its entry from here. */
  private tableRow(dimension: SectionDimension): TemplateResult {
    const words = this.words.section;
    const { label, valueMm, isDiameter, path } = dimension;
    const value = valueMm === null ? words.notKnown : `${isDiameter ? 'ø ' : ''}${writeValue('valueMm', Math.round(valueMm * 1000) / 1000, this.lengthStyle)}`;
    return html`<tr><th scope="row">${path === '' ? label : html`<button type="button" @click=${() => { this.tap(dimension); }}>${label}</button>`}</th><td>${value}</td></tr>`;
  }

  private tap({ name, path }: SectionDimension): void {
    if (path === '') return;
    this.dispatchEvent(new CustomEvent<SectionTap>('seat-dimension', { detail: { name, path }, bubbles: true, composed: true }));
  }
}

/** A joint that is magnified below the drawing, and where it is in it. */
export interface SectionDetail {
  readonly letter: string;
  /** What meets there; '' where there is but one. */
  readonly name: string;
  readonly marks: GapMarks;
  readonly hatches: readonly [outer: string, inner: string];
  readonly x: number;
  readonly y: number;
  /** Its letter stands below the ring. */
  readonly isBelow?: boolean;
}

/** A tool that slides to its place when another one is drawn. */
export function slidIn({ mode, driver, pushTube }: SectionGeometry, tool: SVGTemplateResult | ''): DirectiveResult {
  return keyed(`${mode} ${driver?.name ?? ''}`, svg`<g class="tool moved ${pushTube === null ? '' : 'from-inside'}">${tool}</g>`);
}

declare global {
  interface HTMLElementTagNameMap {
    'seat-section': SeatSection;
  }
  interface HTMLElementEventMap {
    'seat-dimension': CustomEvent<SectionTap>;
  }
}
