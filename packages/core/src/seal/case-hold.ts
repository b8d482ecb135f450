import { findMaterial } from '../material/index.js';
import type { Assumption, Span } from '../result/index.js';
import { holdsByMetal, type Construction } from './seal-field.js';
import type { Situation } from './situation-field.js';
import { sizesOf, type Sizes } from './sizes-of.js';
import { housingGive } from './internal/housing-give.js';
import { sealLimit } from './internal/seal-limit.js';

/** How a seal holds in its bore, cold. Spans run over the tolerances and over what had to be assumed. */
export interface CaseHold {
  /** Seal outside less bore, diametral; may be negative. */
  readonly interferenceUm: Span;
  /** Elastic part that goes on holding after the case has yielded, diametral. */
  readonly heldUm: Span;
  readonly contactPressureMpa: Span;
  /** Force to push it in, from low to high friction; null where no estimate exists (rubber-covered) or where even the largest seal is loose. */
  readonly pushInForceN: Span | null;
  /** Axial force it withstands, counted with low friction. */
  readonly holdingForceN: Span | null;
  readonly caseThicknessMm: Span;
  readonly caseYieldMpa: Span;
  /** Growth of the bore for each MPa, on the diameter; 0 where nothing is known of the housing. */
  readonly housingGiveMmPerMpa: number;
  readonly isYielding: boolean;
  readonly assumptions: readonly Assumption[];
}

/** Case of a seal where nobody measured it: cold-rolled drawing steel about a millimetre thick. */
export const assumedCaseThicknessMm = sealLimit('case-thickness', 'Mm');
const assumedYieldMpa = sealLimit('case-yield', 'Mpa');
/** Friction of a metal case pushed into a bore. */
export const frictionPushingIn = sealLimit('friction-pushing-in', 'Coefficient');
/** Share of the marked width that bears in the bore: 0.85 (DIN 3760, t1) to all of it. */
const bearingShare = sealLimit('bearing-share', 'Factor');
const frictionHolding = sealLimit('friction-holding', 'Coefficient');
export const caseMaterialId = 'steel-c20';

/**
 * Hold of the case: interference, the elastic part of it, pressure and forces.
 *   p = min(I/K, 2·t·σy/D),  K = D²/(2·t·E) + give of the housing;  held = p·K;  F = μ·p·π·D·L,  L from 0.85·b to b
 * Thin ring in a bore that gives by Lamé; the flanged end is stiffer than the ring. Without a housing material the bore is stiff.
 * @returns null without a bore reading or without an allowance for this size
 * @source plain-mechanics (held as: computed); case: en-10130 (held as: memory)
 * @example caseHold({ bore: { readings: [{ instrument: 'inside-micrometer-rod', valuesMm: [35.012, 35.015] }], material: 'al-a380' }, seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR' } }).interferenceUm.low.toFixed(0) // '56'
 */
export function caseHold(situation: Situation, sizes: Sizes = sizesOf(situation)): CaseHold | null {
  const { bore, sealOutside } = sizes;
  if (bore === null || sealOutside === null) return null;
  const { seal } = situation;
  const interferenceMm: Span = {
    low: sealOutside.leastMm - (bore.meanMm + bore.expandedUncertaintyMm),
    high: sealOutside.mostMm - (bore.meanMm - bore.expandedUncertaintyMm),
  };
  const isMetal = holdsByMetal(seal.construction);
  const share = metalShareOf(seal.construction);
  const thickness: Span = seal.caseThicknessMm === undefined ? spanOf(assumedCaseThicknessMm) : { low: seal.caseThicknessMm, high: seal.caseThicknessMm };
  const yieldMpa: Span = seal.caseYieldMpa === undefined ? spanOf(assumedYieldMpa) : { low: seal.caseYieldMpa, high: seal.caseYieldMpa };
  const assumptions = assumptionsOf(situation, thickness, yieldMpa, isMetal);
  const interferenceUm = microns(interferenceMm);
  const none: Span = { low: 0, high: 0 };
  if (!isMetal || interferenceMm.high <= 0) {
    return {
      interferenceUm, heldUm: clipped(interferenceUm), contactPressureMpa: none, pushInForceN: null, holdingForceN: null,
      caseThicknessMm: thickness, caseYieldMpa: yieldMpa, housingGiveMmPerMpa: 0, isYielding: false, assumptions,
    };
  }
  const youngsMpa = findMaterial(caseMaterialId).youngsModulusGpa * 1000;
  const diameterMm = seal.outsideMm;
  const give = housingGive(situation)?.mmPerMpa ?? 0;
  const complianceOf = (wallMm: number) => diameterMm ** 2 / (2 * wallMm * youngsMpa) + give;
  const pressure = (interference: number, wallMm: number, limit: number) => Math.min(Math.max(interference, 0) / complianceOf(wallMm), (2 * wallMm * limit) / diameterMm);
  const contactPressureMpa: Span = { low: pressure(interferenceMm.low, thickness.low, yieldMpa.low), high: pressure(interferenceMm.high, thickness.high, yieldMpa.high) };
  const heldMm: Span = { low: contactPressureMpa.low * complianceOf(thickness.low), high: contactPressureMpa.high * complianceOf(thickness.high) };
  const force = (friction: number, pressureMpa: number, lengthMm: number) => friction * pressureMpa * Math.PI * diameterMm * lengthMm;
  const forces = (friction: Span): Span => ({
    low: force(friction.low, contactPressureMpa.low, share.low * seal.widthMm),
    high: force(friction.high, contactPressureMpa.high, share.high * seal.widthMm),
  });
  return {
    interferenceUm,
    heldUm: microns(heldMm),
    contactPressureMpa,
    pushInForceN: forces(frictionPushingIn),
    holdingForceN: forces(frictionHolding),
    caseThicknessMm: thickness,
    caseYieldMpa: yieldMpa,
    housingGiveMmPerMpa: give,
    isYielding: interferenceMm.high > ((2 * thickness.low * yieldMpa.low) / diameterMm) * complianceOf(thickness.low),
    assumptions,
  };
}

const halfMetal = sealLimit('half-rubber-metal-share', 'Factor');

/** Share of the marked width that presses as bare metal: what bears in the bore, and of a half-rubber seal its metal half. */
export function metalShareOf(construction: Construction): Span {
  const half = construction === 'half-rubber' ? halfMetal : { low: 1, high: 1 };
  return { low: bearingShare.low * half.low, high: bearingShare.high * half.high };
}

function assumptionsOf({ seal }: Situation, thickness: Span, yieldMpa: Span, isMetal: boolean): readonly Assumption[] {
  const list: Assumption[] = [];
  if (seal.caseThicknessMm === undefined) {
    list.push({ name: 'case-thickness', value: thickness.low, upToValue: thickness.high, unit: 'mm', source: assumedCaseThicknessMm.source, effect: 'force-and-hold' });
  }
  if (!isMetal) return list;
  if (seal.construction === 'half-rubber') list.push({ name: 'half-rubber-metal-share', value: halfMetal.low * 100, upToValue: halfMetal.high * 100, unit: '%', source: halfMetal.source, effect: 'force-and-hold' });
  if (seal.caseYieldMpa === undefined) {
    list.push({ name: 'case-yield', value: yieldMpa.low, upToValue: yieldMpa.high, unit: 'MPa', source: assumedYieldMpa.source, effect: 'force-and-hold' });
  }
  list.push(
    { name: 'friction-pushing-in', value: frictionPushingIn.low, upToValue: frictionPushingIn.high, unit: '', source: frictionPushingIn.source, effect: 'push-in-force' },
    { name: 'friction-holding', value: frictionHolding.low, upToValue: frictionHolding.high, unit: '', source: frictionHolding.source, effect: 'holding-force' },
  );
  return list;
}

function spanOf({ low, high }: Span): Span {
  return { low, high };
}

function microns({ low, high }: Span): Span {
  return { low: low * 1000, high: high * 1000 };
}

function clipped({ low, high }: Span): Span {
  return { low: Math.max(low, 0), high: Math.max(high, 0) };
}
