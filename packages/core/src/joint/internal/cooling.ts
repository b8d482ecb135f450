import { coolingAgents } from '../../tables/generated/cooling-agents.js';
import { namedValue } from '../../tables/named-value.js';

/** How cold a part becomes in a household freezer, in dry ice and in liquid nitrogen [°C]. */
export const freezer = namedValue(coolingAgents, 'freezer', 'C');
export const dryIce = namedValue(coolingAgents, 'dry-ice', 'C');
export const liquidNitrogen = namedValue(coolingAgents, 'liquid-nitrogen', 'C');

/**
 * Cautions beside chilling a part: what burns and smothers is dry ice and nitrogen, not a freezer.
 * @internal
 */
export function chillCautions(coldC: number): readonly string[] {
  return coldC < freezer.low ? ['cold-burns', 'cold-gas-smothers'] : [];
}
