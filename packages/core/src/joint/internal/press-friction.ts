import { source, type Assumption, type Span } from '../../result/index.js';
import type { Material } from '../../material/index.js';
import { pressFriction as table } from '../../tables/generated/press-friction.js';

/** Friction between steel and the hub: the span over dry and oiled, release and slip. null where the table has no such hub. */
export function tabledFriction(hub: Material, condition?: 'dry' | 'oiled'): Span | null {
  const family = hub.family === 'stainless' ? 'steel' : hub.family;
  const found: number[] = [];
  table.columns.family.forEach((name, i) => {
    if (name !== family || (condition !== undefined && table.columns.condition[i] !== condition)) return;
    for (const value of [table.columns.releaseCoefficient[i], table.columns.slipCoefficient[i]]) if (typeof value === 'number') found.push(value);
  });
  return found.length === 0 ? null : { low: Math.min(...found), high: Math.max(...found) };
}

export const frictionSource = source(table.source, table.held, 'friction of longitudinal press fits');

/** The assumption that stands for a friction nobody gave. */
export function frictionAssumption({ low, high }: Span): Assumption {
  return { name: 'friction-of-joint', value: low, upToValue: high, unit: '', source: frictionSource, effect: 'force-and-grip' };
}
