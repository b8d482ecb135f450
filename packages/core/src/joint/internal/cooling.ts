/** [°C] What a household freezer reaches; colder takes dry ice or nitrogen. Common practice (no source). */
export const freezerC = -18;

/**
 * Cautions beside chilling a part: what burns and smothers is dry ice and nitrogen, not a freezer.
 * @internal
 */
export function chillCautions(coldC: number): readonly string[] {
  return coldC < freezerC ? ['cold-burns', 'cold-gas-smothers'] : [];
}
