import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { explainDrivers, explainExtraction, explainSeating } from '../../packages/core/src/handwork/index.js';
import { positionsOf, readWorkshop, situationOf } from '../../packages/core/src/job/index.js';
import type { WorkingStep } from '../../packages/core/src/result/index.js';
import { explainSeal, type Situation } from '../../packages/core/src/seal/index.js';
import { expectWorkingHolds } from '../laws/internal/evaluate-working.js';

/** The steps of a working by symbol, as reviewed; each formula is evaluated by a machine of its own and must give the value beside it. */
function symbols(steps: readonly WorkingStep[]): string {
  expectWorkingHolds(steps);
  for (const { meaning, source } of steps) expect([meaning.length > 2, source.id.length > 2]).toEqual([true, true]);
  return steps.map(({ symbol }) => symbol).join(' ');
}

function situationIn(file: string, position: string) {
  const { workshop } = readWorkshop(JSON.parse(readFileSync(new URL(`../../apps/bench/public/samples/${file}.json`, import.meta.url), 'utf8')));
  const found = positionsOf(workshop).find((one) => one.position.name === position);
  const part = found?.position.parts.find(({ kind }) => kind === 'seal');
  if (found === undefined || part?.kind !== 'seal') throw new Error(`no seal at ${position} in ${file}`);
  return { situation: situationOf(workshop, found.position, part), tools: workshop.toolsAtHand === undefined ? {} : { toolsAtHand: workshop.toolsAtHand } };
}

const hole = 'd r_i r_o r d_limit d_max';
const drill = 'd_p p g s n';
const screws = 'P z S_low S_all_low S_high S_all_high';
const rim = 'D_rim D_bend d_face d_alone B d_s';
const hold = 'I_least I_most K_low p_low I_held_low F_low K_high p_high I_held_high F_high';
const strength = 'A sigma F_e gamma sigma_w F_y';

test.each([
  // A rubber cover is not computed as a metal one: no pressure, no hold in newtons; a shoulder is not there to be measured from.
  ['bearing-outboard-crank', 'crank, drive side, bearing and seal', 'MPE_d d MPE_B B a_min a_max I_useful I_least I_most v F_p', `${hole} ${drill} s_h m ${screws}`, `${rim} L tool m_rim m_face m_shaft m_bore`, 'seat h s t_1 e l m r'],
  // The bore was not read: what depends on it is left out.
  ['bearing-wash-pump-unmeasured', 'motor end', 'MPE_d d a_min a_max I_useful v', `${hole} ${drill} ${screws}`, `${rim} tool m_rim m_face m_shaft m_land`, 'seat h s t_1 e l'],
  ['bilge-pump', 'pump shaft, motor side', `MPE_d d MPE_B B a_min a_max I_useful ${hold} v`, `${hole} ${drill} s_h m ${screws} F_low F_high`, `${rim} L tool m_rim m_face m_shaft m_land ${strength}`, 'seat h s t_1 e l m r'],
  ['does-not-suit', 'drive shaft', 'MPE_d d MPE_B B a_min a_max I_useful I_least I_most v', `${hole} ${drill} m ${screws}`, `${rim} L tool m_rim m_face m_shaft m_bore`, 'seat h h_low h_high s t_1 e r'],
  ['missing-readings', 'impeller side', 'a_min a_max I_useful v', `${hole} ${drill} ${screws}`, `${rim} tool m_rim m_face m_shaft m_land`, 'seat h s t_1 e'],
  // A metal case in light alloy: when hot it holds less, and from some temperature not at all; pressure pushes it out.
  ['old-inch-pump', 'gland end', `MPE_d d MPE_B B a_min a_max I_useful ${hold} a_h q_high T_earliest T_latest v F_p`, `${hole} ${drill} m ${screws} F_low F_high`, `${rim} L tool m_rim m_face m_shaft m_land ${strength}`, 'seat h s t_1 e l r'],
  ['outboard-two-stroke', 'crank, flywheel side', `MPE_d d MPE_B B a_min a_max I_useful ${hold} a_h q_high T_earliest T_latest v F_p`, `${hole} ${drill} s_h m ${screws} F_low F_high`, `${rim} L tool m_rim m_face m_shaft m_land ${strength}`, 'seat h s t_1 e l m r'],
  ['outboard-two-stroke', 'crank, drive side', 'MPE_d d MPE_B B a_min a_max I_useful I_least I_most v F_p', `${hole} ${drill} s_h m ${screws}`, `${rim} L tool m_rim m_face m_shaft m_bore`, 'seat h h_low h_high s t_1 e m r'],
  ['winch-gearbox', 'drum shaft, output side', 'MPE_d d MPE_B B a_min a_max I_useful I_least I_most v F_p', `${hole} ${drill} s_h m ${screws}`, `${rim} L tool m_rim m_face m_shaft m_bore`, 'seat h s t_1 e l m r'],
])('%s, %s', (file, position, check, out, driver, seat) => {
  const { situation, tools } = situationIn(file, position);
  expect(symbols(explainSeal(situation))).toBe(check);
  expect(symbols(explainExtraction(situation))).toBe(out);
  expect(symbols(explainDrivers({ ...situation, ...tools }))).toBe(driver);
  expect(symbols(explainSeating(situation))).toBe(seat);
});

test('of a seal alone, nothing else known', () => {
  const bare: Situation = { seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' } };
  expect(symbols(explainSeal(bare))).toBe('a_min a_max I_useful');
  expect(symbols(explainExtraction(bare))).toBe(`${hole} ${drill} ${screws}`);
  expect(symbols(explainDrivers(bare))).toBe(`${rim} tool m_rim m_face m_shaft m_land`);
  expect(symbols(explainSeating(bare))).toBe('seat h s t_1 e');
});
