import type { DriverSearchOutput } from '../../handwork/index.js';
import type { Finding } from '../../result/index.js';
import type { Catalogue } from '../catalogue.js';
import type { SheetBlock } from '../sheet-document.js';
import { findingItem, writeFinding } from '../write-finding.js';
import { writeValue, type WritingStyle } from '../write-value.js';
import { wordFor } from '../word-for.js';

const shownCandidates = 4;
const shownMisses = 3;

/** What drives it in: the best candidates side by side, the nearest misses, and one to turn. */
export function driverBlocks(driver: DriverSearchOutput, catalogue: Catalogue, style: WritingStyle): readonly SheetBlock[] {
  const label = (key: string) => catalogue.labels[key] ?? key;
  const mm = (value: number) => writeValue('valueMm', value, style);
  const span = (nominalMm: number, { low, high }: { readonly low: number; readonly high: number }) => `${mm(nominalMm + low)} ${label('to')} ${mm(nominalMm + high)}`;
  const why = (reasons: readonly Finding[]) =>
    reasons.filter((reason) => reason.severity !== 'good' && reason.severity !== 'note').slice(0, 2).map((reason) => writeFinding(reason, catalogue, style).says).join(' ');
  const stopNote = (reasons: readonly Finding[]) => {
    const note = reasons.find(({ code }) => code === 'driver-stop-standing-out');
    return note === undefined ? '' : `. ${writeFinding(note, catalogue, style).todo ?? ''}`;
  };
  const blocks: SheetBlock[] = [];
  const shown = driver.findings.filter((finding) => finding.severity !== 'good');
  if (shown.length > 0) blocks.push({ kind: 'list', isNumbered: false, isSmall: false, items: shown.map((finding) => findingItem(finding, catalogue, style)) });
  if (driver.candidates.length > 0) {
    blocks.push({
      kind: 'table',
      columns: [label('candidate'), label('verdict'), label('why')],
      rows: driver.candidates.slice(0, shownCandidates).map((candidate) => [
        `${wordFor(candidate.name, catalogue)} (${label(candidate.origin)})`,
        wordFor(candidate.verdict, catalogue),
        why(candidate.reasons) || `${mm(candidate.outsideMm.low)} × ${mm(candidate.insideMm.low)}, ${wordFor(candidate.role, catalogue)}${stopNote(candidate.reasons)}`,
      ]),
    });
  }
  const misses = driver.nearMisses.filter((miss) => miss.origin === 'own').slice(0, shownMisses);
  if (misses.length > 0) {
    blocks.push({ kind: 'table', columns: [label('nearMiss'), label('why')], rows: misses.map((miss) => [wordFor(miss.name, catalogue), why(miss.reasons)]) });
  }
  const turned = driver.turnedDriver;
  if (turned !== null) {
    const parts = [
      wordFor(turned.form, catalogue),
      `${label('outside')} ${mm(turned.outsideMm)} ${turned.outsideClass} (${span(turned.outsideMm, turned.outsideDeviationMm)})`,
      `${label('inside')} ${mm(turned.insideMm)} ${turned.insideClass} (${span(turned.insideMm, turned.insideDeviationMm)}), ${mm(turned.insideDepthMm)} ${label('deep')}`,
      ...(turned.collarOutsideMm === null || turned.stepHeightMm === null ? [] : [`${label('collar')} ${mm(turned.collarOutsideMm)}, ${label('step')} ${mm(turned.stepHeightMm)} ${turned.stepClass ?? ''}`]),
      ...(turned.recessInsideMm === null || turned.stepHeightMm === null ? [] : [`${label('recess')} ${mm(turned.recessInsideMm)}, ${mm(turned.stepHeightMm)} ${turned.stepClass ?? ''} ${label('deep')}`]),
      `${label('length')} ${mm(turned.lengthMm)}`,
    ];
    blocks.push({ kind: 'paragraph', text: `${driver.candidates.length === 0 ? label('nothingSuits') : `${label('turnIt')}:`} ${parts.join('; ')}.`, isSmall: false });
  }
  return blocks;
}
