import { expect, test } from 'vitest';
import { jobSheet } from './job-sheet.js';
import { jobSheetInSteps } from './whole-sheet.js';

const seal = { kind: 'seal', shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' };
const sheet = (innerDepthMm: number) =>
  jobSheet.run({
    workshop: {
      format: 'seatwright', version: 1,
      machines: [{ name: 'winch', positions: [{ name: 'drum', parts: [{ ...seal, name: 'outer', seat: { kind: 'depth', depthMm: 0 } }, { ...seal, name: 'inner', seat: { kind: 'depth', depthMm: innerDepthMm } }] }] }],
    },
  });
const codes = (depthMm: number) => sheet(depthMm).fileFindings.map(({ code }) => code);

test('two seals in one bore each need their own depth', () => {
  expect(codes(9)).toContain('seals-stand-apart');
  expect(sheet(9).fileFindings.find(({ code }) => code === 'seals-stand-apart')?.parameters['gapMm']).toBe(2);
  expect(codes(6.5)).toContain('seals-overlap');
  expect(sheet(6.5).verdict).toBe('does not suit');
});

test('in steps it comes to the same, and what is wrong is said at the first', () => {
  const question = { workshop: { format: 'seatwright', version: 1, machines: [{ name: 'winch', positions: [{ name: 'drum', running: { speedRpm: 900 }, parts: [seal, { kind: 'bearing', designation: '6204', shaftClass: 'k6', housingClass: 'H7' }] }] }] } };
  const steps = jobSheetInSteps(question);
  let step = steps.next();
  let count = 0;
  for (; step.done !== true; step = steps.next()) count += 1;
  expect(step.value).toEqual(jobSheet.run(question));
  expect(count).toBeGreaterThan(8);
  expect(() => jobSheetInSteps({ ...question, workshop: {} }).next()).toThrow('format');
});
