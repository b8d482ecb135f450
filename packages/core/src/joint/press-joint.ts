import { deciding, defineCalculation, plainMechanics, supporting, verdictOf, type Finding, type Span } from '../result/index.js';
import { jointState, type JointState } from './internal/joint-state.js';
import { firstFlowPressureMpa, plasticHub } from './internal/plastic-hub.js';
import { pressJointInputField, pressJointOutputField, type PressJointInput, type PressJointOutput } from './internal/press-joint-fields.js';
import { pressJointWorking } from './internal/press-joint-working.js';
import { ringStress, together, tresca, vonMises, type Ring, type StressState } from './internal/thick-ring.js';
import { turningGrowthMm, turningStress } from './internal/turning-ring.js';

export type { PressJointInput, PressJointOutput } from './internal/press-joint-fields.js';

/** Pressure, stress and grip of two cylinders under interference.  p = U/(d·(Co/Eo + Ci/Ei)),  F = π·d·L·μ·p,  T = F·d/2
 * Plane stress, equal lengths, even pressure. Elastic values; once the hub flows (Tresca, perfectly plastic) those stand beside them.
 * @returns pressures and stresses [MPa], forces [N], torque [N·m], size changes [µm, on the diameter]; findings
 * @throws CalculationError invalid-input | contradiction
 * @source timoshenko-strength-2, din-7190-2001 (held as: memory); plain-mechanics (computed)
 * @example pressJoint.run({ jointDiameterMm: 40, shaftBoreMm: 0, hubOutsideMm: 80, lengthMm: 40, interferenceUm: 76, shaft: { youngsModulusGpa: 207, poissonRatio: 0.292, expansionPerK: 1.17e-5 }, hub: { youngsModulusGpa: 207, poissonRatio: 0.292, expansionPerK: 1.17e-5 } }).contactPressureMpa.toFixed(1) // '147.5'
 */
export const pressJoint = defineCalculation({
  name: 'press-joint',
  summary: 'Pressure, stress and grip of a shaft pressed or shrunk into a hub',
  input: pressJointInputField,
  output: pressJointOutputField,
  compute(input): PressJointOutput {
    const state = jointState(input);
    const { contactPressureMpa: p, friction, shaftMaterial, hubMaterial } = state;
    const stresses = stressesOf(state, p);
    const grip = (pressure: number, mu: number | undefined) => (mu === undefined ? null : Math.PI * input.jointDiameterMm * input.lengthMm * mu * pressure);
    const torque = (force: number | null) => (force === null ? null : (force * input.jointDiameterMm) / 2000);
    const axialForceN = grip(p, friction?.low);
    const elasticPlastic = plasticOf(state, input, grip, torque);
    const firstYieldUm = {
      hub: hubMaterial.yieldMpa === null ? null : firstYield(state, hubMaterial.yieldMpa, (at) => vonMises(stressesOf(state, at).hub)),
      shaft: shaftMaterial.yieldMpa === null ? null : firstYield(state, shaftMaterial.yieldMpa, (at) => worstOf(stressesOf(state, at).shaft, vonMises)),
    };
    const yields = {
      hub: hubMaterial.yieldMpa === null ? null : vonMises(stresses.hub) > hubMaterial.yieldMpa,
      shaft: shaftMaterial.yieldMpa === null ? null : worstOf(stresses.shaft, vonMises) > shaftMaterial.yieldMpa,
    };
    const slipRatio = slipOf(input, elasticPlastic?.axialForceN ?? axialForceN);
    const findings = findingsOf(state, yields, elasticPlastic, slipRatio);
    return {
      verdict: verdictOf(findings),
      contactPressureMpa: p,
      contactPressureSpanMpa: { low: Math.max(state.effectiveSpanUm.low, 0) / 1000 / state.compliance, high: Math.max(state.effectiveSpanUm.high, 0) / 1000 / state.compliance },
      effectiveInterferenceUm: state.effectiveUm,
      thermalInterferenceUm: state.thermalUm,
      turningLossUm: state.turningUm,
      smoothingUm: state.smoothingUm,
      hubHoopStressMpa: stresses.hub.hoopMpa,
      hubVonMisesMpa: vonMises(stresses.hub),
      hubTrescaMpa: tresca(stresses.hub),
      shaftHoopStressMpa: { bore: input.shaftBoreMm === 0 ? null : (stresses.shaft[0]?.hoopMpa ?? null), surface: stresses.shaft[1]?.hoopMpa ?? 0 },
      shaftVonMisesMpa: worstOf(stresses.shaft, vonMises),
      shaftTrescaMpa: worstOf(stresses.shaft, tresca),
      criterion: 'von Mises',
      yields,
      firstYieldUm,
      elasticPlastic,
      pressForceN: grip(p, friction?.high),
      axialForceN,
      torqueNm: torque(axialForceN),
      slipRatio,
      hubOutsideGrowthUm: 1000 * (state.hubCompliance.outsideByInner * p + turningGrowthMm(state.hub, state.hubSpin, state.hub.outsideMm)),
      shaftBoreGrowthUm: input.shaftBoreMm === 0 ? null : 1000 * (state.shaftCompliance.insideByOuter * p + turningGrowthMm(state.shaft, state.shaftSpin, input.shaftBoreMm)),
      looseFromRpm: looseSpeed(input, state),
      findings,
      assumptions: state.assumptions,
      notChecked: notCheckedOf(input, state, elasticPlastic),
    };
  },
  explain: (input, output) => pressJointWorking(input, jointState(input), output),
});

interface Stresses {
  readonly hub: StressState;
  /** At the bore (solid: the middle) and at the surface. */
  readonly shaft: readonly StressState[];
}

function stressesOf({ shaft, hub, shaftSpin, hubSpin }: JointState, pressureMpa: number): Stresses {
  const at = (ring: Ring, spin: number, inner: number, outer: number, diameterMm: number) => together(ringStress(ring, inner, outer, diameterMm), turningStress(ring, spin, diameterMm));
  return {
    hub: at(hub, hubSpin, pressureMpa, 0, hub.insideMm),
    shaft: [at(shaft, shaftSpin, 0, pressureMpa, shaft.insideMm), at(shaft, shaftSpin, 0, pressureMpa, shaft.outsideMm)],
  };
}

function worstOf(states: readonly StressState[], measure: (state: StressState) => number): number {
  return Math.max(...states.map(measure));
}

/** Effective interference at which a stress that grows with the pressure meets the yield strength; zero where turning alone passes it. */
function firstYield(state: JointState, yieldMpa: number, stressAt: (pressureMpa: number) => number): number {
  if (stressAt(0) >= yieldMpa) return 0;
  let [low, high] = [0, yieldMpa];
  while (stressAt(high) < yieldMpa) high *= 2;
  for (let i = 0; i < 200 && high - low > 1e-13 * high; i += 1) {
    const middle = (low + high) / 2;
    if (stressAt(middle) < yieldMpa) low = middle;
    else high = middle;
  }
  return ((low + high) / 2) * state.compliance * 1000;
}

type Grip = (pressureMpa: number, friction: number | undefined) => number | null;

function plasticOf(state: JointState, input: PressJointInput, grip: Grip, torque: (force: number | null) => number | null): PressJointOutput['elasticPlastic'] {
  const { hub, hubMaterial, friction } = state;
  if (hubMaterial.yieldMpa === null || state.hubSpin > 0 || state.shaftSpin > 0) return null;
  const found = plasticHub(hub, hubMaterial.yieldMpa, state.shaftCompliance.outsideByOuter, state.effectiveUm / 1000);
  if (found === null) return null;
  const axialForceN = grip(found.contactPressureMpa, friction?.low);
  return {
    ...found,
    plasticAreaPercent: (100 * (found.plasticDiameterMm ** 2 - input.jointDiameterMm ** 2)) / (hub.outsideMm ** 2 - input.jointDiameterMm ** 2),
    pressForceN: grip(found.contactPressureMpa, friction?.high),
    axialForceN,
    torqueNm: torque(axialForceN),
  };
}

function slipOf({ axialLoadN, torqueLoadNm, jointDiameterMm }: PressJointInput, holdsN: number | null): number | null {
  if ((axialLoadN === undefined && torqueLoadNm === undefined) || holdsN === null || holdsN === 0) return null;
  return Math.hypot(axialLoadN ?? 0, ((torqueLoadNm ?? 0) * 2000) / jointDiameterMm) / holdsN;
}

/** Loss by turning grows with the square of the speed; both parts turn together. */
function looseSpeed({ interferenceUm, jointDiameterMm: d }: PressJointInput, { shaft, hub, shaftMaterial, hubMaterial, smoothingUm, thermalUm }: JointState): number | null {
  if (shaftMaterial.densityKgPerM3 === null || hubMaterial.densityKgPerM3 === null) return null;
  const atRest = interferenceUm - smoothingUm + thermalUm;
  const perSpin = (density: number) => density * (Math.PI / 30) ** 2 * 1e-12;
  const lossUm = 1000 * (turningGrowthMm(hub, perSpin(hubMaterial.densityKgPerM3), d) - turningGrowthMm(shaft, perSpin(shaftMaterial.densityKgPerM3), d));
  return atRest <= 0 || lossUm <= 0 ? null : Math.sqrt(atRest / lossUm);
}

/** From this share of plastic section on, textbooks advise against a joint. */
const mostPlasticPercent = 30;

function findingsOf(state: JointState, yields: PressJointOutput['yields'], plastic: PressJointOutput['elasticPlastic'], slipRatio: number | null): readonly Finding[] {
  const findings: Finding[] = [];
  const span: Span = state.effectiveSpanUm;
  if (state.effectiveUm <= 0) findings.push(deciding('joint-loose', 'bad', { gapUm: 0 - state.effectiveUm }, plainMechanics));
  else if (span.low <= 0) findings.push(deciding('joint-may-be-loose', 'care', { leastUm: span.low, mostUm: span.high }, plainMechanics));
  else findings.push(deciding('joint-presses', 'good', { pressureMpa: state.contactPressureMpa, effectiveUm: state.effectiveUm }, plainMechanics));
  if (plastic?.isFullyPlastic === true) findings.push(deciding('hub-flows-through', 'bad', { pressureMpa: plastic.contactPressureMpa }, plainMechanics));
  else if (plastic !== null) findings.push(deciding('hub-flows-in-part', plastic.plasticAreaPercent > mostPlasticPercent ? 'bad' : 'care', { areaPercent: plastic.plasticAreaPercent, pressureMpa: plastic.contactPressureMpa }, plainMechanics));
  else if (yields.hub === true) findings.push(deciding('hub-yields', 'care', { yieldMpa: state.hubMaterial.yieldMpa ?? 0 }, plainMechanics));
  if (yields.shaft === true) findings.push(deciding('shaft-yields', 'care', { yieldMpa: state.shaftMaterial.yieldMpa ?? 0 }, plainMechanics));
  if (yields.hub === null && state.effectiveUm > 0) findings.push(supporting('hub-strength-unknown', 'note', {}, plainMechanics));
  if (slipRatio !== null) findings.push(deciding(slipRatio > 1 ? 'joint-slips' : 'joint-holds-load', slipRatio > 1 ? 'bad' : 'good', { slipRatio }, plainMechanics));
  return findings;
}

function notCheckedOf(input: PressJointInput, state: JointState, plastic: PressJointOutput['elasticPlastic']): readonly string[] {
  const list = ['edge-pressure', 'form-and-roughness'];
  if (state.friction === null) list.push('friction-of-this-pair');
  if (state.hubMaterial.yieldMpa !== null && (state.hubSpin > 0 || state.shaftSpin > 0) && state.contactPressureMpa > firstFlowPressureMpa(state.hub, state.hubMaterial.yieldMpa)) list.push('flow-while-turning');
  else if (plastic === null && state.hubMaterial.yieldMpa !== null && state.contactPressureMpa > firstFlowPressureMpa(state.hub, state.hubMaterial.yieldMpa)) list.push('flow-beyond-textbook');
  if (input.temperatureC !== undefined || input.hubTemperatureC !== undefined || input.shaftTemperatureC !== undefined) list.push('modulus-and-yield-at-temperature');
  return list;
}
