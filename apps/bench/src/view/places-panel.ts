import { html, nothing, type TemplateResult } from 'lit';
import { withFirstPosition, withMachine, withoutMachine, withoutPosition, withPosition, withPositionsSwapped, withShaftRenamed, type ChangedPlaces } from '../document/change-places.js';
import { outlineOf, type MachineOutline, type PositionOutline, type ShaftOutline } from '../document/outline.js';
import { machinePath, positionPath, type Place } from '../document/places.js';
import type { Json, JsonObject, Path } from '../document/raw-document.js';
import { words } from '../words/index.js';
import { shaftLine } from './shaft-line.js';

interface PlacesState {
  readonly document: JsonObject;
  readonly place: Place;
  /** What was done last, where there is something to say. */
  readonly news: string;
}

interface PlacesActions {
  /** One entry is typed anew. */
  change(path: Path, value: Json | undefined): void;
  /** Machines or positions came, went, changed places or were renamed together; `focus` names the element to go on from, else it is the name of the open position. */
  rearrange(next: ChangedPlaces, news: string, focus?: string): void;
  say(news: string): void;
  open(place: Place): void;
  close(): void;
}

/** The machines of the open file, their shafts, and what sits on them: added, renamed and taken away here. */
export function placesPanel(state: PlacesState, actions: PlacesActions): TemplateResult {
  const { document, news } = state;
  const machines = outlineOf(document);
  return html`<section class="places-panel" aria-label=${words.places.heading}>
    <h2>${words.places.heading}</h2>
    ${machines.map((machine) => machineOf(machine, machines.length > 1, state, actions))}
    <p class="ways">
      <button type="button" class="plain" @click=${() => { actions.rearrange(withMachine(document, words.places.newMachine, words.places.newPosition), words.places.added.replace('{name}', words.places.newMachine)); }}>+ ${words.places.addMachine}</button>
      <button type="button" class="plain" @click=${() => { actions.close(); }}>${words.places.close}</button>
    </p>
    <p role="status" class="news">${news}</p>
  </section>`;
}

function machineOf(machine: MachineOutline, isRemovable: boolean, state: PlacesState, actions: PlacesActions): TemplateResult {
  const { document, place } = state;
  const [first] = machine.shafts.flatMap(({ positions }) => positions);
  return html`<section class="machine" aria-label=${machine.name === '' ? words.places.unnamed : machine.name}>
    ${nameField(`machine-${machine.machine}`, words.bar.machine, machine.name, (name) => { actions.change([...machinePath({ machine: machine.machine, position: 0 }), 'name'], name); })}
    ${hasTwins(machine) ? html`<p class="fault">${words.places.twins}</p>` : nothing}
    ${machine.shafts.map((shaft, i) => shaftOf(shaft, i, machine, state, actions))}
    <p class="ways">
      <button type="button" class="plain" @click=${() => { actions.rearrange(first === undefined ? withFirstPosition(document, machine.machine, words.places.newPosition) : withPosition(document, first.place, words.places.newPosition, freeShaftName(machine)), words.places.added.replace('{name}', words.places.newPosition)); }}>+ ${first === undefined ? words.places.newPosition : words.places.addShaft}</button>
      ${isRemovable
        ? html`<button type="button" class="plain" @click=${() => { remove(withoutMachine(document, machine.machine, place), machine.name, actions); }}>${words.remove}: ${machine.name === '' ? words.places.unnamed : machine.name}</button>`
        : nothing}
    </p>
  </section>`;
}

function shaftOf({ name, positions }: ShaftOutline, at: number, machine: MachineOutline, state: PlacesState, actions: PlacesActions): TemplateResult {
  const { document, place } = state;
  const last = positions.at(-1);
  const rename = (to: string) => { actions.rearrange({ file: withShaftRenamed(document, machine.machine, name, to), place }, ''); };
  return html`<div class="shaft">
    ${machine.shafts.length < 2 && name === '' ? nothing : nameField(`shaft-${machine.machine}-${at}`, words.places.shaft, name, rename, 'when left')}
    ${shaftLine(positions)}
    <ol class="places">${positions.map((position, i) => positionOf(position, i, positions, state, actions))}</ol>
    ${last === undefined ? nothing : html`<button type="button" class="plain" @click=${() => { actions.rearrange(withPosition(document, last.place, words.places.newPosition), words.places.added.replace('{name}', words.places.newPosition)); }}>+ ${words.places.addPosition}</button>`}
  </div>`;
}

function positionOf({ place, name }: PositionOutline, at: number, onShaft: readonly PositionOutline[], state: PlacesState, actions: PlacesActions): TemplateResult {
  const isOpen = place.machine === state.place.machine && place.position === state.place.position;
  const shown = name === '' ? words.places.unnamed : name;
  const moveButton = (way: 'before' | 'behind', neighbour: PositionOutline | undefined) => {
    const move = () => {
      if (neighbour === undefined) return;
      const { place: to } = neighbour;
      // One goes on from where the position is now, the same way if there is one.
      actions.rearrange(withPositionsSwapped(state.document, place, to, state.place), words.places.moved.replace('{name}', shown), `move-${way}-${to.machine}-${to.position}`);
    };
    return onShaft.length < 2 ? nothing : html`<button type="button" class="plain" id="move-${way}-${place.machine}-${place.position}" aria-label="${words.places[way]}: ${shown}" aria-disabled=${neighbour === undefined ? 'true' : 'false'} @click=${move}>${way === 'before' ? '↑' : '↓'}</button>`;
  };
  return html`<li aria-current=${isOpen ? 'true' : 'false'}>
    ${nameField(`position-${place.machine}-${place.position}`, `${words.bar.position} ${at + 1}`, name, (typed) => { actions.change([...positionPath(place), 'name'], typed); })}
    <p class="ways">
      ${isOpen ? html`<span class="quiet">${words.places.isOpen}</span>` : html`<button type="button" class="plain" aria-label="${words.places.open}: ${shown}" @click=${() => { actions.open(place); }}>${words.places.open}</button>`}
      ${moveButton('before', onShaft[at - 1])}${moveButton('behind', onShaft[at + 1])}
      <button type="button" class="plain" aria-label="${words.remove}: ${shown}" @click=${() => { remove(withoutPosition(state.document, place, state.place), name, actions); }}>${words.remove}</button>
    </p>
  </li>`;
}

/** The last position of a file stays: a sheet without one is none. */
function remove(next: ChangedPlaces | null, name: string, actions: PlacesActions): void {
  const shown = name === '' ? words.places.unnamed : name;
  if (next === null) actions.say(words.places.lastStays);
  else actions.rearrange(next, words.places.removed.replace('{name}', shown));
}

/** A name is taken over at each stroke; that of a shaft `when left`, since half of it may be the name of another shaft, which would be one with it then. */
function nameField(id: string, label: string, value: string, typed: (value: string) => void, when: 'at once' | 'when left' = 'at once'): TemplateResult {
  const take = (isTime: boolean) => (event: Event) => { if (isTime) typed((event.target as HTMLInputElement).value); };
  return html`<div class="text-field"><label for=${id}>${label}</label><input id=${id} type="text" autocomplete="off" .value=${value} @input=${take(when === 'at once')} @change=${take(when === 'when left')} /></div>`;
}

function hasTwins({ shafts }: MachineOutline): boolean {
  const names = shafts.flatMap(({ positions }) => positions.map(({ name }) => name));
  return new Set(names).size < names.length;
}

/** A name that no shaft of the machine bears yet. */
function freeShaftName({ shafts }: MachineOutline): string {
  const taken = new Set(shafts.map(({ name }) => name));
  for (let number = 2; ; number += 1) {
    const name = words.places.newShaft.replace('{number}', String(number));
    if (!taken.has(name)) return name;
  }
}
