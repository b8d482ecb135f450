import { CalculationError, invalidInput } from '../result/index.js';
import type { Machine, Position, WorkshopFile } from './workshop-file-field.js';

export interface FoundPosition {
  readonly machine: Machine;
  readonly position: Position;
  /** Path in the file, e.g. `machines[0].positions[1]`. */
  readonly path: string;
}

/**
 * Every position of a workshop, in file order.
 * @example positionsOf(readWorkshop({ format: 'seatwright', version: 1, machines: [{ name: 'Bilge pump', hourMeterHours: 120, positions: [{ name: 'drive side', serviceIntervalHours: 100, parts: [{ kind: 'seal', shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }] }] }] }).workshop).length // 1
 */
export function positionsOf(workshop: WorkshopFile): readonly FoundPosition[] {
  return workshop.machines.flatMap((machine, m) => machine.positions.map((position, p) => ({ machine, position, path: `machines[${m}].positions[${p}]` })));
}

/**
 * Every position of a machine, or of all machines when none is named. Where no name is written so, capitals and spaces around it do not count.
 * @throws CalculationError invalid-input (no such machine), naming those there are; (no position in it)
 * @example positionsNamed(readWorkshop({ format: 'seatwright', version: 1, machines: [{ name: 'Bilge pump', positions: [{ name: 'drive side', parts: [{ kind: 'bearing', designation: '6203' }] }] }] }).workshop, { machine: 'bilge pump' }).length // 1
 */
export function positionsNamed(workshop: WorkshopFile, wanted: { readonly machine?: string | undefined }): readonly FoundPosition[] {
  const all = named(positionsOf(workshop), wanted.machine, ({ machine }) => machine.name);
  if (all.length > 0) return all;
  const names = workshop.machines.map((machine) => machine.name);
  const isKnown = wanted.machine === undefined || names.some((name) => plain(name) === plain(wanted.machine ?? ''));
  if (isKnown) throw invalidInput(wanted.machine === undefined ? 'machines' : 'machine', wanted.machine ?? names.join(', '), 'a machine with positions', 'there is no position in it');
  throw invalidInput('machine', wanted.machine, `one of ${quoted(names)}`, `no such machine; there are ${quoted(names)}`);
}

/**
 * The position of that name; the only one when no name is given. Where no name is written so, capitals and spaces around it do not count.
 * @throws CalculationError invalid-input (no such position, or several and none named), naming those there are
 * @example findPosition(readWorkshop({ format: 'seatwright', version: 1, machines: [{ name: 'Bilge pump', hourMeterHours: 120, positions: [{ name: 'drive side', serviceIntervalHours: 100, parts: [{ kind: 'seal', shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }] }] }] }).workshop, { machine: 'Bilge pump' }).path // 'machines[0].positions[0]'
 */
export function findPosition(workshop: WorkshopFile, wanted: { readonly machine?: string | undefined; readonly position?: string | undefined }): FoundPosition {
  const all = positionsNamed(workshop, wanted);
  const matching = named(all, wanted.position, ({ position }) => position.name);
  const [first] = matching;
  const names = quoted(all.map((found) => found.position.name));
  if (first === undefined) throw invalidInput('position', wanted.position, `one of ${names}`, `no such position; there are ${names}`);
  if (matching.length > 1) {
    throw new CalculationError('invalid-input', {
      path: 'position',
      received: wanted.position ?? null,
      allowed: names,
      message: ambiguity(matching, wanted, names),
    });
  }
  return first;
}

/** Those of that name: written just so, or, where none is, alike but for capitals and spaces around it. */
function named(all: readonly FoundPosition[], name: string | undefined, nameOf: (found: FoundPosition) => string): readonly FoundPosition[] {
  if (name === undefined) return all;
  const exact = all.filter((found) => nameOf(found) === name);
  return exact.length > 0 ? exact : all.filter((found) => plain(nameOf(found)) === plain(name));
}

function plain(name: string): string {
  return name.trim().toLowerCase();
}

function ambiguity(matching: readonly FoundPosition[], { machine, position }: { readonly machine?: string | undefined; readonly position?: string | undefined }, names: string): string {
  if (position === undefined) return `position: the file has several; name one of ${names}`;
  const machines = new Set(matching.map((found) => found.machine.name));
  if (machines.size > 1 && machine === undefined) return `position: several machines have ${quoted([position])}; name the machine too, one of ${quoted([...machines])}`;
  return `position: ${quoted([position])} stands ${matching.length} times under ${quoted([...machines])}; give each a name of its own`;
}

function quoted(names: readonly string[]): string {
  const shown = names.slice(0, 20).map((name) => `"${name}"`);
  return names.length > 20 ? `${shown.join(', ')} and ${names.length - 20} more` : shown.join(', ');
}
