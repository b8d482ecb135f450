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
 * The position of that name; the only one when no name is given.
 * @throws CalculationError invalid-input (no such position, or several and none named), naming those there are
 * @example findPosition(readWorkshop({ format: 'seatwright', version: 1, machines: [{ name: 'Bilge pump', hourMeterHours: 120, positions: [{ name: 'drive side', serviceIntervalHours: 100, parts: [{ kind: 'seal', shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' }] }] }] }).workshop, { machine: 'Bilge pump' }).path // 'machines[0].positions[0]'
 */
export function findPosition(workshop: WorkshopFile, wanted: { readonly machine?: string | undefined; readonly position?: string | undefined }): FoundPosition {
  const all = positionsOf(workshop).filter((found) => wanted.machine === undefined || found.machine.name === wanted.machine);
  if (wanted.machine !== undefined && all.length === 0) {
    throw invalidInput('machine', wanted.machine, `one of ${quoted(workshop.machines.map((machine) => machine.name))}`, `no such machine; there are ${quoted(workshop.machines.map((machine) => machine.name))}`);
  }
  const matching = wanted.position === undefined ? all : all.filter((found) => found.position.name === wanted.position);
  const [first] = matching;
  const names = quoted(all.map((found) => found.position.name));
  if (first === undefined) throw invalidInput('position', wanted.position, `one of ${names}`, `no such position; there are ${names}`);
  if (matching.length > 1) {
    throw new CalculationError('invalid-input', {
      path: 'position',
      received: wanted.position ?? null,
      allowed: names,
      message: wanted.position === undefined ? `position: the file has several; name one of ${names}` : `position: several machines have ${quoted([wanted.position])}; name the machine too`,
    });
  }
  return first;
}

function quoted(names: readonly string[]): string {
  const shown = names.slice(0, 20).map((name) => `"${name}"`);
  return names.length > 20 ? `${shown.join(', ')} and ${names.length - 20} more` : shown.join(', ');
}
