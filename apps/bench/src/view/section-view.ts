import { html, type TemplateResult } from 'lit';
import type { SectionMode, SectionTap } from '@seatwright/elements/seat-section.js';
import type { SheetContext } from './sheet-context.js';

interface Look {
  readonly mode: SectionMode;
  readonly highlight?: string;
  readonly isCompact?: boolean;
  /** On paper: at a fixed width, without the table. */
  readonly isOnPaper?: boolean;
  readonly withoutDetail?: boolean;
  readonly tapped?: (tap: SectionTap) => void;
}

/** The section of the place: with its bearing where there is one, once what draws bearings is there. */
export function sectionView({ situation, seal, driver, bearing, bearingOutcome, bearingDriver, style }: SheetContext, { mode, highlight = '', isCompact = false, isOnPaper = false, withoutDetail = false, tapped }: Look): TemplateResult {
  const tap = ({ detail }: CustomEvent<SectionTap>) => { tapped?.(detail); };
  const drawWidth = isOnPaper ? 400 : 0;
  if (bearing !== null && drawsBearings()) {
    return html`<seat-bearing-section .situation=${situation} .check=${seal?.check ?? null} .extraction=${seal?.extraction ?? null} .seating=${seal?.seating ?? null} .driver=${driver}
      .bearing=${bearing} .seats=${bearingOutcome?.seat ?? null} .removal=${bearingOutcome?.removal ?? null} .bearingDriver=${bearingDriver}
      mode=${mode} highlight=${highlight} draw-width=${drawWidth} ?compact=${isCompact} ?without-table=${isOnPaper} ?without-detail=${withoutDetail} length-unit=${style.lengthUnit} decimal-mark=${style.decimalMark} @seat-dimension=${tap}></seat-bearing-section>`;
  }
  return html`<seat-section .situation=${situation} .check=${seal?.check ?? null} .extraction=${seal?.extraction ?? null} .seating=${seal?.seating ?? null} .driver=${driver}
    mode=${mode} highlight=${highlight} draw-width=${drawWidth} ?compact=${isCompact} ?without-table=${isOnPaper} ?without-detail=${withoutDetail} length-unit=${style.lengthUnit} decimal-mark=${style.decimalMark} @seat-dimension=${tap}></seat-section>`;
}

/** What draws bearings comes when there is one. */
export function drawsBearings(): boolean {
  return customElements.get('seat-bearing-section') !== undefined;
}
