import { html, nothing, type TemplateResult } from 'lit';
import { outlineOf, type MachineOutline, type PositionOutline, type ShaftOutline } from '../document/outline.js';
import type { Place } from '../document/places.js';
import { copyMark, titleOf, type KeptSheet } from '../keeping/kept-sheets.js';
import { words } from '../words/index.js';
import { shaftLine } from './shaft-line.js';

/** When a position is due, in one line. */
export interface DueLine {
  readonly text: string;
  readonly isOverdue: boolean;
}

interface KeptActions {
  openKept(sheet: KeptSheet, place: Place): void;
  removeKept(sheet: KeptSheet): void;
}

/** The machines of one kept workshop file: each shaft as a line with its positions on it, and what is due. `changed` says when it was last written. */
export function keptMachines(sheet: KeptSheet, changed: string, dueOf: (place: Place) => DueLine | undefined, actions: KeptActions): TemplateResult {
  const title = titleOf(sheet);
  return html`<li>
    ${outlineOf(sheet.file).map((machine) => machineOf(machine, sheet, dueOf, actions))}
    <p class="kept-foot"><span class="quiet">${changed}</span><button type="button" class="plain" aria-label="${words.remove}: ${title}" @click=${() => { actions.removeKept(sheet); }}>${words.remove}</button></p>
  </li>`;
}

function machineOf(machine: MachineOutline, sheet: KeptSheet, dueOf: (place: Place) => DueLine | undefined, actions: KeptActions): TemplateResult {
  const { name, hourMeter, shafts } = machine;
  return html`<h3>${name === '' ? words.places.unnamed : name}${copyMark(sheet.copyNumber)}${hourMeter === '' ? nothing : html` <span class="quiet">${/[a-z]/iu.test(hourMeter) ? hourMeter : `${hourMeter} h`}</span>`}</h3>
    ${shafts.map((shaft) => shaftOf(shaft, machine, sheet, dueOf, actions))}`;
}

function shaftOf({ name, positions }: ShaftOutline, machine: MachineOutline, sheet: KeptSheet, dueOf: (place: Place) => DueLine | undefined, actions: KeptActions): TemplateResult {
  return html`${name === '' ? nothing : html`<h4>${name}</h4>`}
    ${shaftLine(positions)}
    <ul class="positions">${positions.map((position, i) => html`<li><button type="button" class="shelf" @click=${() => { actions.openKept(sheet, position.place); }}>
      <strong>${positions.length < 2 ? nothing : html`<span class="number" aria-hidden="true">${i + 1}</span>`}<span class="heard">${machine.name}, </span>${nameOf(position)}${copyMark(sheet.copyNumber)}</strong>
      ${dueLine(dueOf(position.place))}
    </button></li>`)}</ul>`;
}

function dueLine(due: DueLine | undefined): TemplateResult | typeof nothing {
  return due === undefined ? nothing : html`<span class="due ${due.isOverdue ? 'overdue' : ''}">${due.text}</span>`;
}

function nameOf({ name }: PositionOutline): string {
  return name === '' ? words.places.unnamed : name;
}
