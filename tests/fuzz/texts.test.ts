import { readFileSync, readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { bearingDimensions } from '@seatwright/core/bearing';
import { CalculationError } from '@seatwright/core/result';
import { jobSheet, readWorkshopFile } from '@seatwright/core/job';
import * as quantity from '@seatwright/core/quantity';
import { parseFitDesignation, parseInchFitDesignation, parseZoneDesignation } from '@seatwright/core/tolerance';
import { english, jobSheetDocument, writeHtml, writeMarkdown, writeText } from '@seatwright/core/wording';
import { answerLine } from '../../apps/cli/src/internal/answer-line.js';
import { numbersIn } from '../laws/internal/expect-words.js';
import { attack, inputCount } from './internal/attack.js';
import { bytesOf, textOf } from './internal/spoilt-bytes.js';

const samples = new URL('../../apps/bench/public/samples/', import.meta.url);
const files = readdirSync(samples).filter((name) => name.endsWith('.json')).map((name) => readFileSync(new URL(name, samples)));

/** An answer whose numbers are all finite, or one clear error. */
function sound(run: () => unknown): unknown {
  try {
    const output = run();
    expect(numbersIn(output).every((number) => Number.isFinite(number))).toBe(true);
    return output;
  } catch (error) {
    expect(error).toBeInstanceOf(CalculationError);
    expect((error as CalculationError).message).not.toMatch(/undefined|\[object/u);
    expect((error as CalculationError).message.length).toBeLessThan(2000);
    return undefined;
  }
}

const typed = bytesOf(['19.05', '19,05 mm', '3/4 in', '1 3/8"', '0.002 in', '25 + 0.03', '180 °F', '10 µm', '-0.015', '1e3 mm', '7800 rpm', '2.5 m/s', '0.3 bar', '120 h', '15°', '4.5 kN', '−40 °C']);

test.each([
  ['length', quantity.parseLength], ['deviation', quantity.parseDeviation], ['temperature', quantity.parseTemperature], ['temperature difference', quantity.parseTemperatureDifference], ['turning speed', quantity.parseRotationalSpeed],
  ['surface speed', quantity.parseSurfaceSpeed], ['pressure', quantity.parsePressure], ['force', quantity.parseForce], ['hours', quantity.parseHours], ['angle', quantity.parseAngle],
] as const)('any bytes typed as a %s are a finite number or one clear error', async (_, parse) => {
  await attack(typed, (bytes) => void sound(() => parse(textOf(bytes))));
});

test('any bytes as a designation are understood or refused', async () => {
  const designations = bytesOf(['25 H7/p6', '1 3/8 in h11', '3/4 FN2', '25 p6', '100 JS7/k6', '6203-2RSC3', 'NU 2205 ECP', '0.5 RC5']);
  await attack(designations, (bytes) => {
    const text = textOf(bytes);
    for (const parse of [parseFitDesignation, parseInchFitDesignation, parseZoneDesignation, (designation: string) => bearingDimensions.run({ designation })]) sound(() => parse(text));
  });
});

test('any bytes as a workshop file are read or refused, and a sheet made of them is sound in every writing', async () => {
  await attack(files, (bytes) => {
    const text = textOf(bytes);
    const workshop = sound(() => readWorkshopFile(text).workshop);
    if (workshop === undefined) return;
    const { machines } = workshop as { readonly machines: readonly { readonly name: string; readonly positions: readonly { readonly name: string }[] }[] };
    const output = sound(() => jobSheet.run({ workshop: JSON.parse(text.replace(/^\uFEFF/u, '')) as unknown, machine: machines[0]?.name, position: machines[0]?.positions[0]?.name, asOfDate: '2026-11-02' }));
    if (output === undefined) return;
    const document = jobSheetDocument(output as Parameters<typeof jobSheetDocument>[0], english);
    // A name that says NaN is shown as it is.
    if (!/NaN|Infinity|undefined|\[object/u.test(text)) for (const written of [writeText(document), writeMarkdown(document), writeHtml(document)]) expect(written).not.toMatch(/NaN|Infinity|undefined|\[object/u);
    expect(writeHtml(document)).not.toMatch(/<(?:img|script|iframe|svg)\b|<[^>]*\son\w+=/iu);
  }, Math.min(inputCount, 200_000));
});

test('any bytes as a batch line are one line of JSON, and never an inner fault', async () => {
  const lines = bytesOf(['{"calc":"lip-speed","input":{"shaftDiameterMm":20,"speedRpm":7800,"hours":100}}', '{"id":[1,{"a":null}],"calc":"fit","input":{"nominalMm":"3/4 in","hole":"H7","shaft":"p6"},"explain":true}', '{"calc":"press-joint","input":{"jointDiameterMm":40,"shaftBoreMm":0,"hubOutsideMm":80,"lengthMm":40,"interferenceUm":60,"shaft":"steel-c45","hub":"al-a380","temperatureC":90}}']);
  await attack(lines, (bytes) => {
    const { answer, ok } = answerLine(textOf(bytes), 1);
    expect(answer).not.toContain('\n');
    const parsed = JSON.parse(answer) as { readonly ok: boolean; readonly error?: { readonly code: string } };
    expect(parsed.ok).toBe(ok);
    expect(parsed.error?.code).not.toBe('internal');
  });
});
