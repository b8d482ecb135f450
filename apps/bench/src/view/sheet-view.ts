import { html, nothing, type TemplateResult } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import type { GoTo } from '@seatwright/elements/seat-verdict.js';
import { words } from '../words/index.js';
import { sentences } from '../words/sentences.js';
import { drawingPane, drawingStrip } from './drawing-pane.js';
import { faultElsewhere, measureBlock, nameOfKey, partName } from './measure-block.js';
import { decideBlock, proveBlock, putInBlock, smallPrint, takeOutBlock } from './result-blocks.js';
import type { SheetContext } from './sheet-context.js';

/** One job sheet: the drawing, the verdict, and the work in its order. */
export function sheetView(context: SheetContext, working: TemplateResult | typeof nothing): TemplateResult {
  const { place } = context;
  return html`<main class="sheet" @seat-go=${({ detail }: CustomEvent<GoTo>) => { context.actions.goTo(detail.path); }}>
    ${titleOf(context)}
    ${drawingPane(context)}${drawingStrip(context)}
    ${verdictOf(context)}
    ${keyed(`${place.machine}.${place.position}.${context.sealPart}`, html`<div class="blocks">
      ${measureBlock(context)} ${decideBlock(context, working)} ${takeOutBlock(context)} ${putInBlock(context)} ${proveBlock(context)} ${smallPrint(context)}
    </div>`)}
  </main>`;
}

function titleOf(context: SheetContext): TemplateResult {
  const { places, place, sealParts, sealPart, document, actions } = context;
  const here = places.find(({ machine, position }) => machine === place.machine && position === place.position);
  const value = `${place.machine}.${place.position}`;
  const isOneMachine = places.every(({ machine }) => machine === places[0]?.machine);
  return html`<header class="title">
    <p class="kind">${sentences.labels['title'] ?? ''}</p>
    ${context.output === null ? nothing : html`<seat-verdict class="at-head" aria-hidden="true" compact ?stale=${context.isStale} .verdict=${context.output.verdict}></seat-verdict>`}
    <h1>${here?.machineName ?? ''}<span>${here?.positionName ?? ''}</span></h1>
    ${places.length < 2
      ? nothing
      : html`<div class="picker"><label for="place">${words.bar.position}</label><select id="place" @change=${(event: Event) => {
          const [machine = 0, position = 0] = (event.target as HTMLSelectElement).value.split('.').map(Number);
          actions.choosePlace({ machine, position });
        }}>${places.map((entry) => html`<option value="${entry.machine}.${entry.position}" ?selected=${`${entry.machine}.${entry.position}` === value}>${isOneMachine ? '' : `${entry.machineName}: `}${entry.positionName}</option>`)}</select></div>`}
    <p><button type="button" class="plain" @click=${() => { actions.arrangePlaces(); }}>${words.places.heading}</button></p>
    ${sealParts.length < 2
      ? nothing
      : html`<div class="picker"><label for="part">${words.bar.part}</label><select id="part" @change=${(event: Event) => { actions.chooseSeal(Number((event.target as HTMLSelectElement).value)); }}>${sealParts.map((part) => html`<option value=${part} ?selected=${part === sealPart}>${partName(document, place, part, sealParts)}</option>`)}</select></div>`}
  </header>`;
}

function verdictOf(context: SheetContext): TemplateResult {
  const { output, style, isStale, fault, toBegin, actions } = context;
  const elsewhere = faultElsewhere(context);
  return html`<section class="verdict" aria-label=${sentences.labels['verdict'] ?? ''} aria-live="polite">
    ${toBegin.length === 0
      ? nothing
      : html`<p class="begin"><button type="button" class="go" @click=${() => { actions.goTo(toBegin[0] ?? ''); }}>${words.beginWith}: ${(words.beginNames as Readonly<Record<string, string>>)[toBegin[0] ?? ''] ?? toBegin[0]}</button><span>${toBegin.length > 1 ? words.thenMore.replace('{count}', String(toBegin.length - 1)) : ''}</span></p>`}
    ${output === null
      ? nothing
      : html`<seat-verdict .verdict=${output.verdict} .findings=${context.same('findings', output.parts.flatMap((part) => part.findings))} .nextReading=${isStale ? null : output.nextReading} next-name=${nameOfKey(output.nextReading ?? '')} ?stale=${isStale} .writing=${style}></seat-verdict>`}
    ${fault === null ? nothing : elsewhere === '' ? html`<p class="fault"><button type="button" class="go" @click=${() => { actions.goTo(fault.key); }}>${words.goToFault}</button></p>` : html`<p class="fault">${words.faultElsewhere}: ${elsewhere}</p>`}
  </section>`;
}
