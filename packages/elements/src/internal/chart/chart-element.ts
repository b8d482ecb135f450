import { html, LitElement, nothing, svg, type PropertyValues, type TemplateResult } from 'lit';
import { property, state } from 'lit/decorators.js';
import { plainStyle, type Catalogue, type WritingStyle } from '@seatwright/core/wording';
import type { ElementWords } from '../../words/element-words.js';
import { englishWords } from '../../words/english.js';
import { SpeaksPageLanguage } from '../../words/speak.js';
import { tokens } from '../tokens.js';
import type { ChartData, ChartOrWhy } from './chart-data.js';
import { styles } from './chart.styles.js';
import { drawChart } from './draw-chart.js';

/** What every chart does with its data: draws them, keys them, tells them in words and as a table. */
export abstract class ChartElement extends LitElement {
  static override styles = [tokens, styles];

  /** The element's own words. */
  @property({ attribute: false }) words: ElementWords = englishWords;
  /** In which unit and with which decimal mark numbers are written. */
  @property({ attribute: false }) writing: WritingStyle = plainStyle;
  @state() private width = 0;

  private readonly watch = new ResizeObserver(([entry]) => { this.width = Math.round(entry?.contentRect.width ?? 0); });

  /** @param catalogue the sentences that the chart begins with, where it says any */
  constructor(catalogue?: Catalogue) {
    super();
    new SpeaksPageLanguage(this, catalogue);
  }

  /** The chart of what is given, or why there is none. */
  protected abstract data(): ChartOrWhy;

  override connectedCallback(): void {
    super.connectedCallback();
    this.watch.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.watch.disconnect();
  }

  protected override shouldUpdate(changed: PropertyValues<this>): boolean {
    return changed.size > 0;
  }

  override render(): TemplateResult {
    const data = this.data();
    if ('why' in data) return html`<p class="above">${data.why}</p>`;
    const width = Math.max(this.width, 260);
    const height = Math.round(Math.min(360, Math.max(220, width * 0.55)));
    return html`<figure part="chart">
      <figcaption>${data.title}</figcaption>
      <p class="above">${data.y.label}</p>
      <svg role="img" aria-label=${data.spoken} viewBox="0 0 ${width} ${height}" height=${height}>${drawChart(data, width, height)}</svg>
      ${this.key(data)}
    </figure>
    <details><summary>${this.words.charts.table}</summary>
      <div class="table" tabindex="0" role="region" aria-label=${data.title}><table><thead><tr>${data.table.columns.map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>
      <tbody>${data.table.rows.map(([first = '', ...cells]) => html`<tr><th scope="row">${first}</th>${cells.map((cell) => html`<td>${cell}</td>`)}</tr>`)}</tbody></table></div>
      <button type="button" @click=${(event: Event) => void this.copy(data, event.currentTarget as HTMLButtonElement)}>${this.words.charts.copy}</button>
    </details>`;
  }

  /** What each line and hatching stands for. */
  private key(data: ChartData): TemplateResult | typeof nothing {
    const areas = data.bands.map(({ name, pattern }) => ({ name, sign: svg`<rect class="box ${pattern}" fill="url(#${pattern})" x="1" y="1" width="28" height="12"></rect>` }));
    const lines = data.lines.map(({ name, pattern }) => ({ name, sign: svg`<path class="line ${pattern}" d="M0 7H30"></path>` }));
    const marks = [...new Set(data.marks.map(({ name }) => name))].map((name) => ({ name, sign: svg`<g class="mark"><circle cx="15" cy="7" r="4.5"></circle></g>` }));
    const all = [...areas, ...lines, ...marks];
    return all.length === 0 ? nothing : html`<ul>${all.map(({ name, sign }) => html`<li><svg aria-hidden="true" viewBox="0 0 30 14">${sign}</svg>${name}</li>`)}</ul>`;
  }

  /** The table as text that a spreadsheet takes. */
  private async copy({ table }: ChartData, button: HTMLButtonElement): Promise<void> {
    try {
      await navigator.clipboard.writeText([table.columns, ...table.rows].map((row) => row.join('\t')).join('\n'));
      button.textContent = this.words.charts.copied;
    } catch {
      getSelection()?.selectAllChildren(button.parentElement?.querySelector('table') ?? button);
    }
  }
}
