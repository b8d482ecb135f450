import type { SealOutcome } from '../../job/index.js';
import { boreBandOf, shaftBandOf, type Situation, type SealCheckOutput } from '../../seal/index.js';
import type { Catalogue } from '../catalogue.js';
import type { SheetBlock } from '../sheet-document.js';
import { writeValue, type WritingStyle } from '../write-value.js';
import { wordFor } from '../word-for.js';

/** The table of sizes: what is marked, what was measured with which doubt, and where it should lie. */
export function sizeBlocks(seal: SealOutcome, check: SealCheckOutput, catalogue: Catalogue, style: WritingStyle, heading: string): readonly SheetBlock[] {
  const label = (key: string) => catalogue.labels[key] ?? key;
  const situation = seal.situation as Situation;
  const { seal: marked } = situation;
  const mm = (value: number) => writeValue('valueMm', value, style);
  const um = (value: number) => writeValue('valueUm', value, style);
  const measured = (size: SealCheckOutput['bore']) =>
    size === null ? '?' : `${mm(size.meanMm)} ±\u00a0${mm(size.expandedUncertaintyMm)} (${wordFor(size.instrument, catalogue)})`;
  const band = (nominalMm: number, { lowerMm, upperMm, label: name }: { readonly lowerMm: number; readonly upperMm: number; readonly label: string }) =>
    `${mm(nominalMm + lowerMm)} ${label('to')} ${mm(nominalMm + upperMm)} (${wordFor(name, catalogue)})`;
  const rows: (readonly string[])[] = [
    [label('shaft'), mm(marked.shaftMm), measured(check.shaft), band(marked.shaftMm, shaftBandOf(check.requirementSet, marked.shaftMm))],
    [label('bore'), mm(marked.outsideMm), measured(check.bore), band(marked.outsideMm, boreBandOf(check.requirementSet, marked.outsideMm))],
  ];
  const span = (low: string, high: string) => (low === high ? low : `${low} ${label('to')} ${high}`);
  if (check.sealOutsideMm !== null) rows.push([label('sealOutside'), mm(marked.outsideMm), '', span(mm(check.sealOutsideMm.low), mm(check.sealOutsideMm.high))]);
  const derived: (readonly string[])[] = [];
  if (check.interferenceUm !== null) derived.push([label('interference'), span(um(check.interferenceUm.low), um(check.interferenceUm.high))]);
  if (check.lipInterferenceMm !== null) derived.push([label('lip'), span(mm(check.lipInterferenceMm.low), mm(check.lipInterferenceMm.high))]);
  if (check.peripheralSpeedMps !== null) derived.push([label('lipSpeed'), writeValue('valueMps', check.peripheralSpeedMps, style)]);
  if (check.pushInForceN !== null) derived.push([label('pushInForce'), span(writeValue('valueN', check.pushInForceN.low, style), writeValue('valueN', check.pushInForceN.high, style))]);
  if (check.looseFromC !== null) derived.push([label('looseFrom'), span(writeValue('valueC', check.looseFromC.earliest, style), writeValue('valueC', check.looseFromC.latest, style))]);
  derived.push([label('requirementSet'), wordFor(check.requirementSet, catalogue)]);
  return [
    { kind: 'heading', text: heading },
    { kind: 'table', columns: [label('size'), label('marked'), label('measured'), label('limits')], rows },
    { kind: 'table', columns: ['', ''], rows: derived },
  ];
}
