import { svg, type SVGTemplateResult } from 'lit';
import { round } from './path.js';
import type { SectionGeometry } from './section-geometry.js';
import type { SectionLayout } from './section-layout.js';

/** A point of the seal: `u` along the axis from the closed face, `v` outward from the shaft, as shares of width and ring height. */
type Place = (u: number, v: number) => string;

/** The parts of one seal as shares of its width and ring height. */
interface Profile {
  readonly at: Place;
  readonly isInward: boolean;
  /** Thickness of sheet and rubber skin: along the axis (`u`) and outward (`v`). */
  readonly sheetU: number;
  readonly sheetV: number;
  readonly skinU: number;
  readonly skinV: number;
  readonly bendU: number;
  readonly bendV: number;
  readonly springU: number;
  readonly springPx: number;
}

/** Middle of the spring, seen from the closed face; just behind the lip. */
const springPlace = { u: 0.57, v: 0.49 } as const;
const lipU = 0.6;
const faceFoot = 0.5;

/** The seal in section: metal case hatched, rubber densely, spring, lip, dust lip. */
export function drawSeal(geometry: SectionGeometry, { x, y, pxPerMm }: SectionLayout): SVGTemplateResult {
  const { widthMm, shaftMm, outsideMm, depthMm, lipFacing, caseMm, coverMm } = geometry;
  const ringMm = (outsideMm - shaftMm) / 2;
  const isInward = lipFacing === 'inward';
  const springMm = Math.min(ringMm * 0.11, widthMm * 0.13);
  const bendMm = Math.min(caseMm * 1.3, widthMm * 0.25);
  const profile: Profile = {
    at: (u, v) => `${round(x(isInward ? depthMm + u * widthMm : depthMm + widthMm - u * widthMm))} ${round(y(shaftMm / 2 + v * ringMm))}`,
    isInward,
    sheetU: caseMm / widthMm,
    sheetV: caseMm / ringMm,
    skinU: coverMm / widthMm,
    skinV: coverMm / ringMm,
    bendU: bendMm / widthMm,
    bendV: bendMm / ringMm,
    springU: springMm / widthMm,
    springPx: springMm * pxPerMm,
  };
  const rubber = rubberPath(profile, geometry);
  const metal = metalPath(profile);
  const [cx = '0', cy = '0'] = profile.at(springPlace.u, springPlace.v).split(' ');
  return svg`<g class="seal">
    <path class="fill" d=${rubber}></path>
    <path class="edge" fill="url(#rubber)" d=${rubber}></path>
    <path class="fill" d=${metal}></path>
    <path class="edge" fill="url(#steel)" d=${metal}></path>
    <circle class="edge fill" cx=${cx} cy=${cy} r=${round(profile.springPx)}></circle>
    <circle class="ink" cx=${cx} cy=${cy} r="0.9"></circle>
  </g>`;
}

/** An angle of sheet: face and cylinder, bent between them. */
function metalPath({ at, sheetU, sheetV, skinU, skinV, bendU, bendV }: Profile): string {
  const top = 1 - skinV;
  const inside = skinU + sheetU;
  const innerBend = 0.35;
  return (
    `M${at(skinU, faceFoot)}L${at(skinU, top - bendV)}Q${at(skinU, top)} ${at(skinU + bendU, top)}` +
    `L${at(0.94, top)}L${at(0.97, top - sheetV * 0.45)}L${at(0.97, top - sheetV)}` +
    `L${at(inside + bendU * innerBend, top - sheetV)}Q${at(inside, top - sheetV)} ${at(inside, top - sheetV - bendV * innerBend)}L${at(inside, faceFoot)}Z`
  );
}

/** Heel, dust lip, membrane, lip, spring groove, the skin inside the face and, where it is covered, around the case. */
function rubberPath(profile: Profile, { hasDustLip, isCovered, isRibbed }: SectionGeometry): string {
  const { at, isInward, sheetU, sheetV, skinU, skinV, springU, springPx } = profile;
  const inside = skinU + sheetU;
  const heel = hasDustLip
    ? `M${at(0, faceFoot)}L${at(0, 0.3)}L${at(-0.04, 0.04)}L${at(0, 0)}L${at(0.13, 0.2)}Q${at(0.16, 0.24)} ${at(0.22, 0.24)}`
    : `M${at(0, faceFoot)}L${at(0, 0.32)}Q${at(0, 0.26)} ${at(0.06, 0.26)}L${at(0.22, 0.24)}`;
  const lip = `Q${at(0.34, 0.22)} ${at(0.42, 0.15)}L${at(lipU, 0)}L${at(0.77, 0.17)}Q${at(0.82, 0.22)} ${at(0.81, 0.3)}L${at(0.78, 0.47)}`;
  const gap = springU * 1.2;
  const { u, v } = springPlace;
  const groove =
    `Q${at((0.78 + u + gap) / 2, 0.56)} ${at(u + gap, v)}` +
    `A${round(springPx * 1.2)} ${round(springPx * 1.2)} 0 0 ${isInward ? 1 : 0} ${at(u - gap, v)}`;
  const membrane = `Q${at(u - gap - 0.03, v + 0.03)} ${at(u - gap - 0.05, v - 0.05)}Q${at(inside + 0.14, 0.38)} ${at(inside + 0.07, 0.56)}L${at(inside + 0.05, 0.82)}Q${at(inside + 0.05, 0.88)} ${at(inside, 0.88)}`;
  if (!isCovered) return `${heel}${lip}${groove}${membrane}L${at(inside, faceFoot)}Z`;
  const ribs = isRibbed ? [0.7, 0.5, 0.3].map((rib) => `L${at(rib, 1)}Q${at(rib - 0.05, 1.07)} ${at(rib - 0.1, 1)}`).join('') : '';
  return `${heel}${lip}${groove}${membrane}L${at(inside, 1 - skinV - sheetV)}L${at(0.97, 1 - skinV - sheetV)}L${at(0.97, 1 - skinV)}L${at(0.88, 1)}${ribs}L${at(0.07, 1)}Q${at(0, 1)} ${at(0, 0.93)}Z`;
}
