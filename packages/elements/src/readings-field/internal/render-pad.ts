import { html, nothing, type TemplateResult } from 'lit';
import { live } from 'lit/directives/live.js';
import { severitySign } from '../../internal/severity-sign.js';
import type { ElementWords } from '../../words/element-words.js';
import { withAngle, withDepth, withOneMoreAngle, withOneMoreDepth, withReading, type Pad } from './pad.js';

/** What stands beside a typed text, or the fault in it. */
export interface Shown {
  readonly text: string;
  readonly fault: string;
}

interface PadView {
  readonly pad: Pad;
  readonly words: ElementWords['field'];
  readonly reading: (text: string) => Shown;
  readonly angle: (text: string) => Shown;
  readonly depth: (text: string) => Shown;
  readonly change: (pad: Pad) => void;
}

interface Cell {
  readonly id: string;
  readonly name: string;
  readonly value: string;
  readonly shown: Shown;
  readonly typed: (value: string) => void;
}

/** The pad as a table: angles down, depths across. Enter goes on to the next cell. */
export function renderPad({ pad, words, reading, angle, depth, change }: PadView): TemplateResult {
  const cells: Cell[] = [];
  const cell = (made: Cell): TemplateResult => {
    cells.push(made);
    return renderCell(made);
  };
  const table = html`<table class="pad">
    <thead><tr>
      <td><span aria-hidden="true">${words.padCorner}</span></td>
      ${pad.depths.map((text, j) => html`<th scope="col">${cell({ id: `depth-${j}`, name: `${words.depth} (${j + 1})`, value: text, shown: depth(text), typed: (value) => { change(withDepth(pad, j, value)); } })}</th>`)}
    </tr></thead>
    <tbody>${pad.angles.map((text, i) => html`<tr>
      <th scope="row">${cell({ id: `angle-${i}`, name: `${words.angle} (${i + 1})`, value: text, shown: angle(text), typed: (value) => { change(withAngle(pad, i, value)); } })}</th>
      ${pad.depths.map((column, j) => {
        const value = pad.cells[i]?.[j]?.value ?? '';
        return html`<td>${cell({ id: `value-${i}-${j}`, name: placeName(words, text, column, i), value, shown: reading(value), typed: (typed) => { change(withReading(pad, i, j, typed)); } })}</td>`;
      })}
    </tr>`)}</tbody>
  </table>`;
  const faulty = cells.filter(({ shown }) => shown.fault !== '');
  return html`<div class="pad-frame" @keydown=${goOn}>${table}</div>
    <div class="pad-more"><button type="button" @click=${() => { change(withOneMoreAngle(pad)); }}>+ ${words.oneMoreAngle}</button><button type="button" @click=${() => { change(withOneMoreDepth(pad)); }}>+ ${words.oneMoreDepth}</button></div>
    ${faulty.map(({ id, name, shown }) => html`<p class="error" id="${id}-error">${severitySign('bad')}<span>${name}: ${shown.fault}</span></p>`)}`;
}

/** What a cell is called by a screen reader: the reading, its angle and its depth. */
function placeName(words: ElementWords['field'], angle: string, depth: string, i: number): string {
  const where = [angle === '' ? `(${i + 1})` : `${words.angle} ${angle}`, depth === '' ? '' : `${words.depth} ${depth}`].filter((text) => text !== '').join(', ');
  return `${words.reading} ${where}`;
}

function renderCell({ id, name, value, shown, typed }: Cell): TemplateResult {
  return html`<input id=${id} type="text" inputmode="decimal" autocomplete="off" spellcheck="false" enterkeyhint="next" aria-label=${name} .value=${live(value)} aria-invalid=${shown.fault === '' ? 'false' : 'true'} aria-describedby=${shown.fault === '' ? nothing : `${id}-error`}
      @input=${(event: Event) => { typed((event.target as HTMLInputElement).value); }} />${shown.text.startsWith('=') ?  html`<span class="understood">${shown.text}</span>` : nothing}`;
}

function goOn(event: KeyboardEvent): void {
  if (event.key !== 'Enter' || !(event.target instanceof HTMLInputElement)) return;
  event.preventDefault();
  const inputs = [...(event.currentTarget as HTMLElement).querySelectorAll('input')];
  inputs[inputs.indexOf(event.target) + 1]?.focus();
}
