import { plainGeometry, plainMechanics, source, type WorkingStep } from '../../result/index.js';
import { findMaterial } from '../../material/index.js';
import { caseMaterialId, frictionPushingIn, metalShareOf } from '../case-hold.js';
import { pressFitAllowanceOf } from '../press-fit-allowance.js';
import { boreBandOf } from '../bore-band.js';
import type { CheckContext } from './check-report.js';

/** The working of a seal check, step by step, from the same context that the checks used. */
export function explainSealCheck(context: CheckContext): readonly WorkingStep[] {
  return [...sizeSteps(context), ...fitSteps(context), ...holdSteps(context), ...heatSteps(context), ...speedSteps(context), ...pushSteps(context)];
}

function sizeSteps({ sizes }: CheckContext): readonly WorkingStep[] {
  const steps: WorkingStep[] = [];
  for (const [symbol, name, size] of [['d', 'shaft', sizes.shaft], ['B', 'bore', sizes.bore]] as const) {
    if (size === null) continue;
    steps.push({ kind: 'lookup', symbol: `MPE_${symbol}`, meaning: `permissible error of the instrument on the ${name}`, table: 'instruments', row: size.instrument.id, column: 'permissibleErrorMm', value: size.instrument.permissibleErrorMm, unit: 'mm', source: size.instrument.source });
    steps.push({ kind: 'choice', symbol, meaning: `${name} as measured`, value: size.meanMm, unit: 'mm', why: `mean of ${size.readingCount} readings, U = ${size.expandedUncertaintyMm.toFixed(4)} mm (k = 2)`, source: source('jcgm-100-2008', 'memory', '4.3') });
  }
  return steps;
}

function fitSteps({ situation, set, sizes }: CheckContext): readonly WorkingStep[] {
  const { sealOutside, bore } = sizes;
  if (sealOutside === null) return [];
  const { seal } = situation;
  const allowance = pressFitAllowanceOf(set, seal.construction, seal.outsideMm);
  const boreUpperMm = boreBandOf(set, seal.outsideMm).upperMm;
  const steps: WorkingStep[] = [
    { kind: 'lookup', symbol: 'a_min', meaning: 'least allowance of the outside over the bore', table: 'press-fit-allowance', row: allowance.row, column: 'allowanceMinMm', value: allowance.allowanceMinMm, unit: 'mm', source: allowance.source },
    { kind: 'lookup', symbol: 'a_max', meaning: 'largest allowance of the outside over the bore', table: 'press-fit-allowance', row: allowance.row, column: 'allowanceMaxMm', value: allowance.allowanceMaxMm, unit: 'mm', source: allowance.source },
    { kind: 'formula', symbol: 'I_useful', meaning: 'least interference that the standard itself lets happen', formula: 'a_min - B_upper', scope: { a_min: allowance.allowanceMinMm, B_upper: boreUpperMm }, value: allowance.allowanceMinMm - boreUpperMm, unit: 'mm', source: allowance.source },
  ];
  if (bore === null) return steps;
  const U = bore.expandedUncertaintyMm;
  return [
    ...steps,
    { kind: 'formula', symbol: 'I_least', meaning: 'interference of the smallest seal in the largest bore that the readings allow', formula: 'S_least - (B + U)', scope: { S_least: sealOutside.leastMm, B: bore.meanMm, U }, value: sealOutside.leastMm - (bore.meanMm + U), unit: 'mm', source: plainGeometry },
    { kind: 'formula', symbol: 'I_most', meaning: 'interference of the largest seal in the smallest bore that the readings allow', formula: 'S_most - (B - U)', scope: { S_most: sealOutside.mostMm, B: bore.meanMm, U }, value: sealOutside.mostMm - (bore.meanMm - U), unit: 'mm', source: plainGeometry },
  ];
}

function holdSteps({ situation, hold }: CheckContext): readonly WorkingStep[] {
  if (hold === null || hold.pushInForceN === null) return [];
  const E = findMaterial(caseMaterialId).youngsModulusGpa * 1000;
  const D = situation.seal.outsideMm;
  const b = situation.seal.widthMm;
  const steps: WorkingStep[] = [];
  for (const end of ['low', 'high'] as const) {
    const held = hold.heldUm[end] / 1000;
    const p = hold.contactPressureMpa[end];
    const t = hold.caseThicknessMm[end];
    const K = D ** 2 / (2 * t * E) + hold.housingGiveMmPerMpa;
    const mu = frictionPushingIn[end];
    const share = metalShareOf(situation.seal.construction)[end];
    steps.push(
      { kind: 'formula', symbol: `K_${end}`, meaning: `give of case and housing together, ${end}`, formula: 'D^2 / (2 * t * E) + k_h', scope: { D, t, E, k_h: hold.housingGiveMmPerMpa }, value: K, unit: 'mm/MPa', source: plainMechanics },
      { kind: 'formula', symbol: `p_${end}`, meaning: `pressure between case and bore, at most where the case yields, ${end}`, formula: 'min(max(I, 0) / K, 2 * t * sy / D)', scope: { I: hold.interferenceUm[end] / 1000, K, t, sy: hold.caseYieldMpa[end], D }, value: p, unit: 'MPa', source: plainMechanics },
      { kind: 'formula', symbol: `I_held_${end}`, meaning: `elastic part of the interference that goes on holding, ${end}`, formula: 'p * K', scope: { p, K }, value: held, unit: 'mm', source: plainMechanics },
      { kind: 'formula', symbol: `F_${end}`, meaning: `force to push it in, ${end}`, formula: 'mu * p * pi * D * k * b', scope: { mu, p, D, k: share, b }, value: hold.pushInForceN[end], unit: 'N', source: plainMechanics },
    );
  }
  return steps;
}

function heatSteps({ situation, hold, hot }: CheckContext): readonly WorkingStep[] {
  if (hold === null || hold.pushInForceN === null || hot?.looseFromC == null) return [];
  const ring = findMaterial(caseMaterialId);
  const D = situation.seal.outsideMm * 1000;
  return [
    { kind: 'lookup', symbol: 'a_h', meaning: 'expansion of the housing material, probable', table: 'materials', row: hot.housingMaterial.id, column: 'expansionUmPerMK', value: hot.housingMaterial.expansionPerK.probable * 1e6, unit: '1e-6/K', source: hot.housingMaterial.source },
    { kind: 'formula', symbol: 'q_high', meaning: 'fastest loss of hold for each kelvin', formula: '(a_h - a_c) * D', scope: { a_h: hot.housingMaterial.expansionPerK.high, a_c: ring.expansionPerK.low, D }, value: hot.lossUmPerK.high, unit: 'µm/K', source: plainMechanics },
    { kind: 'formula', symbol: 'T_earliest', meaning: 'earliest housing temperature without hold', formula: '20 + I_held / q', scope: { I_held: hold.heldUm.low, q: hot.lossUmPerK.high }, value: hot.looseFromC.earliest, unit: '°C', source: plainMechanics },
    { kind: 'formula', symbol: 'T_latest', meaning: 'latest housing temperature without hold', formula: '20 + I_held / q', scope: { I_held: hold.heldUm.high, q: hot.lossUmPerK.low }, value: hot.looseFromC.latest, unit: '°C', source: plainMechanics },
  ];
}

function speedSteps({ situation, sizes, peripheralSpeedMps }: CheckContext): readonly WorkingStep[] {
  const n = situation.running?.speedRpm;
  if (peripheralSpeedMps === null || n === undefined) return [];
  return [
    { kind: 'formula', symbol: 'v', meaning: 'peripheral speed under the lip', formula: 'pi * d * n / 60000', scope: { d: sizes.shaft?.meanMm ?? situation.seal.shaftMm, n }, value: peripheralSpeedMps, unit: 'm/s', source: plainGeometry },
  ];
}

function pushSteps({ situation }: CheckContext): readonly WorkingStep[] {
  const { running, seal } = situation;
  const peakMpa = Math.max(0, running?.pressureMpa ?? 0, running?.pressureLowMpa ?? 0, running?.pressureHighMpa ?? 0);
  if (peakMpa === 0) return [];
  const scope = { p: peakMpa, D: seal.outsideMm, d: seal.shaftMm };
  return [{ kind: 'formula', symbol: 'F_p', meaning: 'force of the pressure on the ring between shaft and bore', formula: 'p * pi * (D^2 - d^2) / 4', scope, value: (peakMpa * Math.PI * (seal.outsideMm ** 2 - seal.shaftMm ** 2)) / 4, unit: 'N', source: plainMechanics }];
}
