import { html, nothing, type TemplateResult } from 'lit';
import { trustedSize, type Readings } from '@seatwright/core/measure';
import { wordFor, writeValue, type WritingStyle } from '@seatwright/core/wording';
import { withoutPart, withSeal } from '../document/change-parts.js';
import { positionPath } from '../document/places.js';
import { listAt, textAt, valueAt, type Path } from '../document/raw-document.js';
import { keyOf, wordOf, type Scope } from '../form/entry.js';
import { groups, obstacleForm, sealName, seatDepth, toolForm, withoutLip, type Group, type GroupName } from '../form/groups.js';
import { lengthIn } from '../form/length-in.js';
import { renderOldDepths } from '../form/render-depths.js';
import { renderEntry } from '../form/render-entry.js';
import { renderList } from '../form/render-list.js';
import { renderReadings } from '../form/render-readings.js';
import { measureLine } from '../sheet/summaries.js';
import { words } from '../words/index.js';
import { sentences } from '../words/sentences.js';
import { renderBlock } from './block.js';
import { faultOf, filePathOf, situationOfSeal, type SheetContext } from './sheet-context.js';

/** What is looked at and measured: the form, in groups that fold to what they hold. */
export function measureBlock(context: SheetContext): TemplateResult {
  const { seal, style, toBegin } = context;
  return renderBlock({
    id: 'measure',
    heading: words.blocks.measure,
    line: toBegin.length > 0 ? `${toBegin.length} ${words.missing}` : seal === null ? '' : measureLine(seal, style),
    isOpen: true,
    content: html`${toBegin.length > 0 ? html`<p class="begin">${words.begin}</p>` : nothing} ${groups().filter((group) => isShown(group.name, context)).map((group) => renderGroup(hasLip(context) ? group : withoutLip(group), context))} ${partsWays(context)}`,
  });
}

/** A sheet with neither part is of a seal to come. */
function hasLip({ sealParts, bearingPart }: SheetContext): boolean {
  return sealParts.length > 0 || bearingPart === null;
}

/** A group stands where its part does: the seal's and its place with a seal, the bearing's with a bearing. */
function isShown(name: GroupName, context: SheetContext): boolean {
  if (name === 'bearing') return context.bearingPart !== null;
  return hasLip(context) || !['seal', 'place'].includes(name);
}

/** Parts come on the sheet once somebody asks for them, and go again where another one stays. */
function partsWays({ document, place, sealPart, sealParts, bearingPart, actions }: SheetContext): TemplateResult {
  const parts: Path = [...positionPath(place), 'parts'];
  const count = listAt(document, parts).length;
  const without = (part: number) => () => {
    const next = withoutPart(document, place, part);
    if (next !== null) actions.changeParts(next);
  };
  return html`<p class="ways">
    <button type="button" class="plain" @click=${() => { actions.changeParts(withSeal(document, place, words.sealNumber)); }}>+ ${sealParts.length === 0 ? words.add.seal : words.add.anotherSeal}</button>
    ${bearingPart === null ? html`<button type="button" class="plain" @click=${() => { actions.change([...parts, count], { kind: 'bearing' }); actions.goTo('bearing.designation'); }}>+ ${words.add.bearing}</button>` : nothing}
    ${sealParts.length > 0 && count > 1 ? html`<button type="button" class="plain" @click=${without(sealPart)}>${words.remove}: ${partName(document, place, sealPart, sealParts)}</button>` : nothing}
    ${bearingPart !== null && count > 1 ? html`<button type="button" class="plain" @click=${without(bearingPart)}>${words.remove}: ${words.groups.bearing}</button>` : nothing}
  </p>`;
}

/** What a seal is called: by its name, else by its number among several. */
export function partName(document: SheetContext['document'], place: SheetContext['place'], part: number, sealParts: readonly number[]): string {
  const name = textAt(document, [...positionPath(place), 'parts', part, 'name']);
  return name !== '' ? name : sealParts.length < 2 ? words.groups.seal : words.sealNumber.replace('{number}', String(sealParts.indexOf(part) + 1));
}

function renderGroup(group: Group, context: SheetContext): TemplateResult {
  const missing = missingIn(group, context);
  const isUnreadable = context.fault !== null && isIn(group, context.fault.key);
  return html`<details class="group" id="group-${group.name}" ?open=${group.name === 'seal' && context.isFresh}>
    <summary><h3>${words.groups[group.name]}</h3><span class="line">${groupLine(group.name, context)}</span>${isUnreadable ? html`<span class="unreadable">${words.unreadable}</span>` : missing > 0 ? html`<span class="missing">${missing} ${words.missing}</span>` : nothing}</summary>
    <div class="content">
      <div class="fields">${special(group.name, 'first', context)}${group.entries.filter((entry) => entry.path !== 'behind' || !isBeforeAnother(context)).map((entry) => renderEntry(entry, context))}${special(group.name, 'last', context)}</div>
      ${group.more.length === 0 && special(group.name, 'more', context) === nothing
        ? nothing
        : html`<details class="more"><summary>${words.more}</summary><div class="fields">${group.more.map((entry) => renderEntry(entry, context))}${special(group.name, 'more', context)}</div></details>`}
    </div>
  </details>`;
}

/** Behind an outer one of several seals lies the next seal: that is not asked. */
function isBeforeAnother({ seal, sealParts, document, place }: SheetContext): boolean {
  return sealParts.length > 1 && situationOfSeal(seal)?.behind === 'second seal' && textAt(document, [...positionPath(place), 'behind']) !== 'second seal';
}

/** Fields that are more than one entry. */
function special(name: GroupName, where: 'first' | 'last' | 'more', context: SheetContext): TemplateResult | typeof nothing {
  switch (`${name} ${where}`) {
    case 'shaft first':
      return context.sealParts.length === 0 ? nothing : renderReadings('position', 'shaft.readings', words.readings.shaft, 'outside', context);
    case hasLip(context) ? 'shaft last' : 'shaft more':
      return renderList(obstacleForm(), words.add.obstacle, words.unfinished, context);
    case 'bore first':
      return context.sealParts.length === 0 ? nothing : renderReadings('position', 'bore.readings', words.readings.bore, 'inside', context);
    case 'bearing last':
      return html`${renderReadings('bearing', 'shaftReadings', words.readings.shaftSeat, 'outside', context)}${renderReadings('bearing', 'housingReadings', words.readings.housingSeat, 'inside', context)}`;
    case 'seal first':
      return context.sealParts.length < 2 ? nothing : renderEntry(sealName(), context);
    case 'seal more':
      return renderReadings('seal', 'outsideReadings', words.readings.seal, 'outside', context);
    case 'place last':
      return html`${seatKindIn(context) === 'depth' ? renderEntry(seatDepth(), context) : nothing}${renderOldDepths(words.oldDepth, context)}`;
    case 'tools last':
      return html`${renderList(toolForm(), words.add.tool, words.unfinishedTool, context)}${ownTools(context)}`;
    default:
      return nothing;
  }
}

/** The way between the tools of the job and those of the person at this device. */
function ownTools({ document, actions, toolNews }: SheetContext): TemplateResult {
  const isEmpty = listAt(document, ['toolsAtHand']).length === 0;
  return html`<div class="wide ways">
    <button type="button" class="plain" @click=${() => { actions.takeOwnTools(); }}>${words.tools.takeOwn}</button>
    ${isEmpty ? nothing : html`<button type="button" class="plain" @click=${() => { actions.makeToolsOwn(); }}>${words.tools.makeOwn}</button>`}
    <span role="status">${toolNews}</span>
  </div>`;
}

function seatKindIn(context: SheetContext): string {
  return textAt(context.document, filePathOf({ scope: 'position', path: 'seat.kind' }, context));
}

/** Keys that belong to a group: its entries, and what is measured in it. */
function keysOf({ name, entries, more }: Group): readonly string[] {
  const readings: Readonly<Partial<Record<GroupName, readonly string[]>>> = { shaft: ['shaft.readings'], bore: ['bore.readings'], seal: ['seal.outsideReadings'], bearing: ['bearing.shaftReadings', 'bearing.housingReadings'], place: ['seat.depthMm', 'oldDepthMm'], tools: ['toolsAtHand', 'file.toolsAtHand'] };
  return [...entries.map(keyOf), ...more.map(keyOf), ...(readings[name] ?? [])];
}

/** Whether a key is one of the group's entries, or lies within one. */
function isIn(group: Group, key: string): boolean {
  return keysOf(group).some((known) => key === known || key.startsWith(`${known}.`) || key.startsWith(`${known}[`));
}

/** How many deciding entries of the group are missing. */
function missingIn(group: Group, context: SheetContext): number {
  const wanted = new Set([...context.toBegin, ...(context.output?.parts ?? []).flatMap((part) => part.findings).flatMap(({ severity, missing }) => (severity === 'unknown' && missing !== undefined ? [missing] : []))]);
  return [...wanted].filter((key) => isIn(group, key)).length;
}

/** What a group holds, in one line. */
function groupLine(name: GroupName, context: SheetContext): string {
  const { document, seal: outcome } = context;
  const text = (scope: Scope, path: string) => textAt(document, filePathOf({ scope, path }, context));
  const length = (scope: Scope, path: string) => lengthIn(document, filePathOf({ scope, path }, context), context.style);
  const some = (...texts: readonly string[]) => texts.filter((part) => part !== '').join(', ');
  switch (name) {
    case 'seal': {
      const size = [length('seal', 'shaftMm'), length('seal', 'outsideMm'), length('seal', 'widthMm')];
      return some(size.every((part) => part === '') ? '' : size.map((part) => part || '?').join(' × '), wordOf(text('seal', 'construction')), text('seal', 'lipMaterial'));
    }
    case 'place': {
      const facing = text('position', 'lipFacing');
      return some(seatKindIn(context) === 'depth' ? fillDepth(length('position', 'seat.depthMm')) : seatWord(seatKindIn(context)), facing === '' ? '' : `${words.lip} ${wordOf(facing)}`, behindLine(wordOf(isBeforeAnother(context) ? 'second seal' : text('position', 'behind')), length('position', 'clearBehindMm')));
    }
    case 'shaft':
      return some(readingsLine('shaft.readings', 'outside', context));
    case 'bore':
      return some(readingsLine('bore.readings', 'inside', context), materialName(text('position', 'bore.material')));
    case 'bearing':
      return some(text('bearing', 'designation'), [text('bearing', 'shaftClass'), text('bearing', 'housingClass')].filter((part) => part !== '').join(' / '));
    case 'running': {
      const speed = text('position', 'running.speedRpm');
      return some(speed === '' ? '' : /[a-z]/iu.test(speed) ? speed : `${speed} ${context.style.units?.['rpm'] ?? 'rpm'}`, wordOf(text('position', 'running.fluid')), temperatureLine(situationOfSeal(outcome)?.running?.fluidTemperatureC, context.style));
    }
    case 'tools': {
      const count = listAt(document, ['toolsAtHand']).length;
      return count === 0 ? words.standardOnly : `${count}`;
    }
    case 'machine': {
      const hours = text('machine', 'hourMeterHours');
      return some(text('machine', 'name'), hours === '' ? '' : `${hours} h`);
    }
  }
}

function readingsLine(path: string, measures: 'outside' | 'inside', context: SheetContext): string {
  const size = path === 'bore.readings' ? context.seal?.check?.bore : context.seal?.check?.shaft;
  if (size != null && !context.isStale) return `${writeValue('valueMm', size.meanMm, context.style)} ±\u00a0${writeValue('valueMm', size.expandedUncertaintyMm, context.style)}`;
  const raw = valueAt(context.document, filePathOf({ scope: 'position', path }, context));
  try {
    const { size, doubts } = trustedSize(raw as unknown as readonly Readings[], measures, { measured: 'measured-shaft', path });
    if (size === null) return doubts.length === 0 ? words.notMeasured : '?';
    return writeValue('valueMm', size.meanMm, context.style);
  } catch {
    return raw === undefined ? words.notMeasured : '';
  }
}

function temperatureLine(valueC: number | undefined, style: WritingStyle): string {
  return valueC === undefined ? '' : writeValue('valueC', valueC, style);
}

function seatWord(kind: string): string {
  return kind === 'flush' || kind === 'shoulder' ? words.seats[kind] : '';
}

function fillDepth(depth: string): string {
  return depth === '' ? words.atDepth : `${depth} ${words.deep}`;
}

function behindLine(behind: string, room: string): string {
  return behind === '' ? '' : room === '' ? behind : `${behind} ${room} ${words.behind}`;
}

function materialName(id: string): string {
  const choices = groups().find((group) => group.name === 'bore')?.entries.find((entry) => entry.path === 'bore.material')?.entry;
  return choices?.kind === 'choice' ? (choices.choices.find(({ value }) => value === id)?.word ?? id) : id;
}

/** What an entry is called in the form; '' when the form has no such entry. */
export function nameOfKey(key: string): string {
  const found = groups().flatMap(({ entries, more }) => [...entries, ...more]).find((entry) => keyOf(entry) === key);
  return found?.name ?? '';
}

/** A fault that no field of the form shows. */
export function faultElsewhere(context: SheetContext): string {
  const { fault } = context;
  if (fault === null) return '';
  const shown = groups().flatMap(keysOf).some((key) => faultOf(key, context) !== '');
  return shown ? '' : wordFor(fault.message, sentences);
}

