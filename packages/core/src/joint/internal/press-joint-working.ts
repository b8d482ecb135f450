import { plainMechanics, source, type WorkingStep } from '../../result/index.js';
import type { PressJointInput, PressJointOutput } from './press-joint-fields.js';
import { frictionSource } from './press-friction.js';
import { referenceC, type JointState } from './joint-state.js';

const lame = source('timoshenko-strength-2', 'memory', 'thick-walled cylinders');

/** The working of a press joint: interference, pressure, stress, grip, size changes. */
export function pressJointWorking(input: PressJointInput, state: JointState, output: PressJointOutput): readonly WorkingStep[] {
  const { jointDiameterMm: d, shaftBoreMm: di, hubOutsideMm: D, lengthMm: L } = input;
  const { shaft, hub, shaftC, hubC, shaftMaterial, hubMaterial } = state;
  const steps: WorkingStep[] = [];
  const add = (symbol: string, meaning: string, formula: string, scope: Readonly<Record<string, number>>, value: number, unit: string, by = lame) => {
    steps.push({ kind: 'formula', symbol, meaning, formula, scope, value, unit, source: by });
  };
  if (state.smoothingSource !== null) {
    const k = input.smoothingRule === 'din-7190-2001' ? 0.8 : 0.4;
    add('G', 'interference lost as the surfaces smooth', 'k * (Rz_A + Rz_I)', { k, Rz_A: input.hubRoughnessRzUm ?? 0, Rz_I: input.shaftRoughnessRzUm ?? 0 }, state.smoothingUm, 'µm', state.smoothingSource);
  }
  if (shaftC !== referenceC || hubC !== referenceC) {
    const scope = { d, alpha_i: shaftMaterial.expansionPerK.probable, alpha_o: hubMaterial.expansionPerK.probable, t_i: shaftC, t_o: hubC, t_0: referenceC };
    add('U_t', 'interference gained by temperature', '1000 * d * (alpha_i * (t_i - t_0) - alpha_o * (t_o - t_0))', scope, state.thermalUm, 'µm', source('iso-1-2022', 'page', 'reference temperature 20 °C'));
  }
  add('U', 'interference that presses', 'I + U_t - G - U_w', { I: input.interferenceUm, U_t: state.thermalUm, G: state.smoothingUm, U_w: state.turningUm }, state.effectiveUm, 'µm', plainMechanics);
  const [Ei, nui, Eo, nuo] = [shaft.youngsMpa, shaft.poissonRatio, hub.youngsMpa, hub.poissonRatio];
  const Co = (D * D + d * d) / (D * D - d * d) + nuo;
  const Ci = (d * d + di * di) / (d * d - di * di) - nui;
  add('C_o', 'hub factor', '(D^2 + d^2) / (D^2 - d^2) + nu_o', { D, d, nu_o: nuo }, Co, '');
  add('C_i', 'shaft factor', '(d^2 + d_i^2) / (d^2 - d_i^2) - nu_i', { d, d_i: di, nu_i: nui }, Ci, '');
  const p = output.contactPressureMpa;
  add('p', 'contact pressure', 'max(U, 0) / 1000 / (d * (C_o / E_o + C_i / E_i))', { U: state.effectiveUm, d, C_o: Co, C_i: Ci, E_o: Eo, E_i: Ei }, p, 'MPa');
  if (state.hubSpin === 0 && state.shaftSpin === 0) {
    add('sigma_t', 'hoop stress at the bore of the hub', 'p * (D^2 + d^2) / (D^2 - d^2)', { p, D, d }, output.hubHoopStressMpa, 'MPa');
    add('sigma_v', 'stress of von Mises there', 'p * sqrt(3 * D^4 + d^4) / (D^2 - d^2)', { p, D, d }, output.hubVonMisesMpa, 'MPa');
    add('sigma_s', 'hoop stress at the surface of the shaft', '-p * (d^2 + d_i^2) / (d^2 - d_i^2)', { p, d, d_i: di }, output.shaftHoopStressMpa.surface, 'MPa');
    if (output.shaftHoopStressMpa.bore !== null) add('sigma_b', 'hoop stress at the bore of the shaft', '-2 * p * d^2 / (d^2 - d_i^2)', { p, d, d_i: di }, output.shaftHoopStressMpa.bore, 'MPa');
    add('dD', 'growth of the outside of the hub', '2000 * p * d^2 * D / (E_o * (D^2 - d^2))', { p, d, D, E_o: Eo }, output.hubOutsideGrowthUm, 'µm');
  }
  const { friction } = state;
  if (friction !== null && output.pressForceN !== null && output.axialForceN !== null && output.torqueNm !== null) {
    const by = input.frictionCoefficient === undefined ? frictionSource : plainMechanics;
    add('F_in', 'force to press it together', 'pi * d * L * mu * p', { d, L, mu: friction.high, p }, output.pressForceN, 'N', by);
    add('F', 'axial force at which it slips', 'pi * d * L * mu * p', { d, L, mu: friction.low, p }, output.axialForceN, 'N', by);
    add('T', 'torque at which it slips', 'F * d / 2000', { F: output.axialForceN, d }, output.torqueNm, 'N·m', plainMechanics);
  }
  const plastic = output.elasticPlastic;
  if (plastic !== null && hubMaterial.yieldMpa !== null) {
    add('p_p', 'contact pressure with the hub flowing to c', 'R_e * (log(c / d) + (1 - (c / D)^2) / 2)', { R_e: hubMaterial.yieldMpa, c: plastic.plasticDiameterMm, d, D }, plastic.contactPressureMpa, 'MPa', source('din-7190-2001', 'memory', 'elastic-plastic press fits'));
  }
  return steps;
}
