import { isObject, listAt, textAt, valueAt, type Json, type JsonObject } from './raw-document.js';
import type { Place } from './places.js';

export type PartKind = 'seal' | 'bearing';

export interface PositionOutline {
  readonly place: Place;
  readonly name: string;
  readonly parts: readonly PartKind[];
}

/** One shaft of a machine, and what sits on it from one end to the other. */
export interface ShaftOutline {
  /** '' for the shaft of positions that name none. */
  readonly name: string;
  readonly positions: readonly PositionOutline[];
}

export interface MachineOutline {
  readonly machine: number;
  readonly name: string;
  readonly hourMeter: string;
  readonly shafts: readonly ShaftOutline[];
}

/** The machines of a file with their shafts and what sits on them, as far as it can be made out. */
export function outlineOf(document: JsonObject): readonly MachineOutline[] {
  return listAt(document, ['machines']).flatMap((machine, m): readonly MachineOutline[] =>
    isObject(machine) ? [{ machine: m, name: textAt(machine, ['name']), hourMeter: textAt(machine, ['hourMeterHours']), shafts: shaftsOf(machine, m) }] : [],
  );
}

function shaftsOf(machine: JsonObject, m: number): readonly ShaftOutline[] {
  const shafts = new Map<string, PositionOutline[]>();
  for (const [p, position] of listAt(machine, ['positions']).entries()) {
    if (!isObject(position)) continue;
    const name = shaftNameOf(position);
    const here = shafts.get(name) ?? [];
    here.push({ place: { machine: m, position: p }, name: textAt(position, ['name']), parts: partsOf(position) });
    shafts.set(name, here);
  }
  return [...shafts].map(([name, positions]) => ({ name, positions }));
}

/** The shaft that a position says it sits on; '' where it says none. */
export function shaftNameOf(position: Json | undefined): string {
  return textAt(position, ['onShaft']);
}

function partsOf(position: Json): readonly PartKind[] {
  return listAt(position, ['parts']).flatMap((part): readonly PartKind[] => {
    const kind = valueAt(part, ['kind']);
    return kind === 'seal' || kind === 'bearing' ? [kind] : [];
  });
}
