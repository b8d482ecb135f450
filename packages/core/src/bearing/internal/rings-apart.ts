import { planStep, source, type PlanStep } from '../../result/index.js';
import type { BearingKind } from './bearing-choices.js';

/** A cylindrical roller bearing is handled ring by ring: a step that says so; none for a bearing whose rings stay together. */
export function ringsApart({ bearingKind, designation }: { readonly bearingKind?: BearingKind | undefined; readonly designation?: string | undefined }): readonly PlanStep[] {
  const isRoller = bearingKind === undefined ? /^\s*N/iu.test(designation ?? '') : bearingKind === 'cylindrical-roller';
  return isRoller ? [planStep('bearing-rings-come-apart', {}, source('common-practice', 'practice'))] : [];
}
