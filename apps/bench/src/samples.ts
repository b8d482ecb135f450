/** A sample workshop file that comes with the page. */
export interface Sample {
  readonly id: string;
  readonly title: string;
  readonly says: string;
}

export const samples: readonly Sample[] = [
  { id: 'bilge-pump', title: 'Bilge pump', says: 'A full sheet: steel case in cast iron, measured all round.' },
  { id: 'outboard-two-stroke', title: 'Outboard crankshaft', says: 'Two seals on a two-stroke: 7800 rpm, hot light alloy, petrol mix.' },
  { id: 'winch-gearbox', title: 'Winch gearbox', says: 'A worn lip track, a ring to take off, the new seal at a depth.' },
  { id: 'old-inch-pump', title: 'Old fire pump', says: 'All in inches and fractions.' },
  { id: 'missing-readings', title: 'Deck wash pump', says: 'Hardly anything measured yet: what to measure first?' },
  { id: 'bearing-outboard-crank', title: 'Crank with its bearing', says: 'Main bearing and seal of a two-stroke, renewed together in a light-alloy case.' },
  { id: 'bearing-winch-drum', title: 'Anchor winch', says: 'A bearing alone: seats, clearance, heat and force.' },
  { id: 'does-not-suit', title: 'Fuel transfer pump', says: 'A seal from the drawer that does not suit.' },
];

/** Where the sample lies, beside the page. */
export function sampleAddress({ id }: Sample): string {
  return `./samples/${id}.json`;
}
