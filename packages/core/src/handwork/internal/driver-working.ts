import { plainGeometry, plainMechanics, type WorkingStep } from '../../result/index.js';
import { outerEnd, type DriverNeed } from './driver-need.js';
import type { JudgedTool } from './judge-tool.js';
import { bucklingSource, freeEndFactor } from './tool-strength.js';

/** The working of a driver search: the window, then the best tool against it. */
export function driverWorking(need: DriverNeed, best: JudgedTool | null): readonly WorkingStep[] {
  return best === null ? windowSteps(need) : [...windowSteps(need), ...toolSteps(need, best), ...strengthSteps(need, best)];
}

function windowSteps(need: DriverNeed): readonly WorkingStep[] {
  const { section, situation, final } = need;
  const { sealOutsideMm: D, coverMm, caseThicknessMm, boreMm } = section;
  const { wallShare: k, bendMm } = outerEnd(section);
  const steps: WorkingStep[] = [
    { kind: 'formula', symbol: 'D_rim', meaning: 'outside from which the push goes straight into the case wall', formula: 'D - 2 * c - k * t', scope: { D: D.high, c: coverMm.low, k, t: caseThicknessMm.low }, value: need.rimFromMm, unit: 'mm', source: plainGeometry },
    { kind: 'formula', symbol: 'D_bend', meaning: 'outside from which it still bears on the bend', formula: 'D - 2 * (c + t + r)', scope: { D: D.high, c: coverMm.low, t: caseThicknessMm.low, r: bendMm.low }, value: need.bendFromMm, unit: 'mm', source: plainGeometry },
    { kind: 'formula', symbol: 'd_face', meaning: 'inside up to which it lands on the flat of the face', formula: 'D - 2 * c - k * max(r, t)', scope: { D: D.low, c: coverMm.high, k, r: bendMm.high, t: caseThicknessMm.high }, value: need.faceUpToMm, unit: 'mm', source: plainGeometry },
    { kind: 'formula', symbol: 'd_alone', meaning: 'inside from which it stays clear of what bends: midway', formula: '(d + D) / 2', scope: { d: situation.seal.shaftMm, D: situation.seal.outsideMm }, value: need.rimAloneFromMm, unit: 'mm', source: plainGeometry },
    { kind: 'choice', symbol: 'B', meaning: 'smallest bore that the readings allow', value: boreMm.low, unit: 'mm', why: section.sizes.bore === null ? 'not measured: as marked' : 'smallest reading less the uncertainty', source: plainGeometry },
  ];
  if (need.clearOver !== null) steps.push({ kind: 'choice', symbol: 'd_s', meaning: 'largest thing that passes through the driver', value: need.clearOver.mm, unit: 'mm', why: need.clearOver.by, source: plainGeometry });
  const protrusionMm = situation.shaft?.protrusionMm;
  if (need.lengthOverMm !== null && protrusionMm !== undefined && final.depthMm !== null) {
    steps.push({ kind: 'formula', symbol: 'L', meaning: 'how far the shaft reaches into the driver', formula: 'p + h', scope: { p: protrusionMm, h: final.depthMm.high }, value: need.lengthOverMm, unit: 'mm', source: plainGeometry });
  }
  return steps;
}

function toolSteps(need: DriverNeed, { tool, margins }: JudgedTool): readonly WorkingStep[] {
  const steps: WorkingStep[] = [
    { kind: 'choice', symbol: 'tool', meaning: 'best tool', value: tool.name, unit: '', why: 'verdict, own tools first, then margin', source: tool.source },
    { kind: 'formula', symbol: 'm_rim', meaning: 'its smallest outside reaches beyond the inside of the case wall by', formula: '(D_tool - D_rim) / 2', scope: { D_tool: tool.outsideMm.low, D_rim: need.rimFromMm }, value: margins.overRimMm, unit: 'mm', source: plainGeometry },
    { kind: 'formula', symbol: 'm_face', meaning: 'its largest inside stays inward of the edge by', formula: '(d_face - d_tool) / 2', scope: { d_face: need.faceUpToMm, d_tool: tool.insideMm.high }, value: margins.ontoFaceMm, unit: 'mm', source: plainGeometry },
  ];
  if (margins.toShaftMm !== null && need.clearOver !== null) steps.push({ kind: 'formula', symbol: 'm_shaft', meaning: 'radial clearance over the shaft', formula: '(d_tool - d_s) / 2', scope: { d_tool: tool.passageMm.low, d_s: need.clearOver.mm }, value: margins.toShaftMm, unit: 'mm', source: plainGeometry });
  if (margins.toBoreMm !== null) steps.push({ kind: 'formula', symbol: 'm_bore', meaning: 'radial clearance in the bore', formula: '(B - D_tool) / 2', scope: { B: need.section.boreMm.low, D_tool: tool.outsideMm.high }, value: margins.toBoreMm, unit: 'mm', source: plainGeometry });
  if (margins.landingMm !== null) steps.push({ kind: 'formula', symbol: 'm_land', meaning: 'reach over the mouth of the bore', formula: '(D_tool - D_mouth) / 2', scope: { D_tool: tool.outsideMm.low, D_mouth: need.mouthMm.high }, value: margins.landingMm, unit: 'mm', source: plainGeometry });
  return steps;
}

function strengthSteps({ pushForceN }: DriverNeed, { tool, strength, stressMpa }: JudgedTool): readonly WorkingStep[] {
  if (strength === null || tool.material === null || pushForceN === null || stressMpa === null) return [];
  const D = tool.outsideMm.low;
  const d = Math.min(tool.insideMm.high, D);
  const { youngsModulusMpa: E, poissonRatio: nu, strengthMpa } = tool.material;
  const R = strength.radiusMm;
  const t = strength.wallMm;
  const steps: WorkingStep[] = [
    { kind: 'formula', symbol: 'A', meaning: 'thinnest section of the wall', formula: 'pi / 4 * (D^2 - d^2)', scope: { D, d }, value: strength.areaMm2, unit: 'mm²', source: plainGeometry },
    { kind: 'formula', symbol: 'sigma', meaning: 'stress in the wall under the largest push', formula: 'F / A', scope: { F: pushForceN.high, A: strength.areaMm2 }, value: stressMpa, unit: 'MPa', source: plainMechanics },
    { kind: 'formula', symbol: 'F_e', meaning: 'push at which it bends over, free at the struck end', formula: 'pi^2 * E * (pi / 64 * (D^4 - d^4)) / (K * L)^2', scope: { E, D, d, K: freeEndFactor, L: strength.lengthMm }, value: strength.eulerForceN, unit: 'N', source: plainMechanics },
    { kind: 'formula', symbol: 'gamma', meaning: 'knock-down of a real tube', formula: '1 - 0.901 * (1 - exp(-sqrt(R / t) / 16))', scope: { R, t }, value: strength.knockDownFactor, unit: '', source: bucklingSource },
    { kind: 'formula', symbol: 'sigma_w', meaning: 'stress at which the wall wrinkles', formula: 'gamma * E * t / (R * sqrt(3 * (1 - nu^2)))', scope: { gamma: strength.knockDownFactor, E, t, R, nu }, value: strength.localBucklingMpa, unit: 'MPa', source: bucklingSource },
  ];
  if (strengthMpa !== null && strength.squashForceN !== null) steps.push({ kind: 'formula', symbol: 'F_y', meaning: 'push that squashes the wall', formula: 's * A', scope: { s: strengthMpa, A: strength.areaMm2 }, value: strength.squashForceN, unit: 'N', source: tool.material.strengthSource });
  return steps;
}
