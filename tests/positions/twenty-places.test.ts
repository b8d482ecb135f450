import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { jobSheet } from '@seatwright/core/job';

const workshop: unknown = JSON.parse(readFileSync(new URL('./twenty-places.json', import.meta.url), 'utf8'));

/** Name, verdict, the finding that makes it, and the reason in one line. Half do not suit or cannot be told. */
const places: readonly (readonly [position: string, verdict: string, top: string | null, because: string])[] = [
  ['bilge pump 1, drive end', 'suits', null, 'everything measured, NBR in oil at 60 °C and 1.9 m/s'],
  ['bilge pump 3, drive end', 'suits', null, 'a rubber-covered seal in a split bore follows the joint'],
  ['capstan gearbox, input', 'suits', null, 'FKM in gear oil at 110 °C'],
  ['winch gearbox, hand side', 'suits', null, 'slow grease-filled shaft, no pressure'],
  ['cooling pump, shaft end', 'suits', null, 'NBR in water at 40 °C'],
  ['generator coupling', 'suits with care', 'track-catches-nail', 'a groove that a nail feels needs another lip place'],
  ['ramp hydraulics, pump', 'suits with care', 'pressure-peak-over', 'pressure swings over the row, its mean does not'],
  ['steering pump', 'suits with care', 'temperature-over-fluid-limit', 'NBR works to 100 °C, in hypoid oil 80 °C is commonly given'],
  ['fire pump, engine side', 'suits with care', 'outside-holds-less-than-standard', 'the bore is worn by 0.06 mm: some hold is left, less than the standard lets happen'],
  ['anchor windlass, motor side', 'suits with care', 'bore-mouth-too-tight', 'no lead-in at the bore: the case shaves going in'],
  ['tender outboard, drive shaft', 'does not suit', 'fluid-attacks-rubber', 'silicone does not stand petrol mix'],
  ['ferry compressor', 'does not suit', 'lip-speed-over', '25 mm at 14 000 rpm is 18.3 m/s, over the general limit and over what NBR is given'],
  ['oil burner pump', 'does not suit', 'temperature-over-working-limit', 'NBR at 130 °C hardens within weeks'],
  ['hydraulic drive, return side', 'does not suit', 'pressure-over', '0.2 MPa steady on a plain lip'],
  ['mooring winch, output', 'does not suit', 'lip-faces-away', 'the open side looks away from the oil'],
  ['bow thruster, gear side', 'does not suit', 'lip-made-for-other-rotation', 'a lip with ribs for one way, the shaft turns the other'],
  ['dinghy engine, mag side', 'does not suit', 'bore-is-another-size', 'the bore measures 42, the seal is marked 40'],
  ['fish pump, drive end', 'cannot tell', 'bore-not-measured', 'nobody measured the bore'],
  ['ballast pump', 'cannot tell', 'outside-hold-cannot-tell', 'a calliper cannot say whether a bore 0.1 over still holds'],
  ['grey-water pump', 'cannot tell', 'fluid-missing', 'what runs inside is not noted'],
];

test.each(places)('%s: %s (%s), because %s', (position, verdict, top) => {
  const output = jobSheet.run({ workshop, position });
  const [part] = output.parts;
  const wanted = { 'does not suit': 'bad', 'cannot tell': 'unknown', 'suits with care': 'care' }[verdict];
  const makers = (part?.findings ?? []).filter(({ severity }) => severity === wanted).map(({ code }) => code);
  expect(output.verdict).toBe(verdict);
  if (top !== null) expect(makers).toContain(top);
});

test('half of the places do not suit or cannot be told', () => {
  expect(places).toHaveLength(20);
  expect(places.filter(([, verdict]) => verdict === 'does not suit' || verdict === 'cannot tell')).toHaveLength(10);
});
