import { source, type SourceReference } from '../../result/index.js';
import type { ToolMaterial } from './tool-material.js';
import type { ToolSize } from './tool-size.js';

/** How a tube gives way under an axial push, at its thinnest. */
export interface ToolStrength {
  readonly areaMm2: number;
  readonly squashForceN: number | null;
  readonly eulerForceN: number;
  readonly localBucklingMpa: number;
  readonly knockDownFactor: number;
  /** The least of the three, and which it is. */
  readonly collapseForceN: number;
  readonly governedBy: 'squash' | 'bending over' | 'wrinkling';
  readonly radiusMm: number;
  readonly wallMm: number;
  readonly lengthMm: number;
}

/** Effective length of a tube held by hand at the seal and free at the struck end. */
export const freeEndFactor = 2;

export const bucklingSource: SourceReference = source('nasa-sp-8007', 'memory', 'knock-down for axial compression');

/**
 * Squash, Euler and wrinkling of the thinnest tube that the bands allow.
 *   F_y = σ·A;  F_e = π²·E·I/(2·L)²;  σ_w = γ·E·t/(R·√(3(1−ν²))), γ = 1 − 0.901·(1 − e^(−√(R/t)/16))
 * @source plain-mechanics (held as: computed); knock-down nasa-sp-8007 (held as: memory)
 */
export function toolStrength({ outsideMm, insideMm }: Pick<ToolSize, 'outsideMm' | 'insideMm'>, material: ToolMaterial, lengthMm: number): ToolStrength | null {
  const D = outsideMm.low;
  const d = Math.min(insideMm.high, D);
  const wallMm = (D - d) / 2;
  if (!(wallMm > 0) || !(lengthMm > 0)) return null;
  const areaMm2 = (Math.PI / 4) * (D ** 2 - d ** 2);
  const inertia = (Math.PI / 64) * (D ** 4 - d ** 4);
  const { youngsModulusMpa: E, poissonRatio, strengthMpa } = material;
  const radiusMm = (D + d) / 4;
  const knockDownFactor = 1 - 0.901 * (1 - Math.exp(-Math.sqrt(radiusMm / wallMm) / 16));
  const localBucklingMpa = (knockDownFactor * E * wallMm) / (radiusMm * Math.sqrt(3 * (1 - poissonRatio ** 2)));
  const eulerForceN = (Math.PI ** 2 * E * inertia) / (freeEndFactor * lengthMm) ** 2;
  const squashForceN = strengthMpa === null ? null : strengthMpa * areaMm2;
  const ways = [
    ['squash', squashForceN ?? Infinity],
    ['bending over', eulerForceN],
    ['wrinkling', localBucklingMpa * areaMm2],
  ] as const;
  const [governedBy, collapseForceN] = ways.reduce<(typeof ways)[number]>((least, way) => (way[1] < least[1] ? way : least), ways[0]);
  return { areaMm2, squashForceN, eulerForceN, localBucklingMpa, knockDownFactor, collapseForceN, governedBy, radiusMm, wallMm, lengthMm };
}
