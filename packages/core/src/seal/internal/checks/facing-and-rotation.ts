import { commonPractice, deciding, source, type Finding } from '../../../result/index.js';
import type { Check } from '../check-report.js';

const fitting = source('workshop-manuals-1995', 'page', 'general fitting of oil seals');

/** Which way the lip faces, and which way the shaft turns. */
export const facingAndRotation: Check = ({ situation }) => {
  const { lipFacing, fluidSide, seal, rotation } = situation;
  const findings: Finding[] = [];
  const notChecked: string[] = [];
  if (lipFacing === undefined || fluidSide === undefined) notChecked.push('lip-facing');
  else if (fluidSide === 'both') {
    findings.push(deciding('fluid-on-both-sides', seal.hasDustLip === true ? 'note' : 'care', { lipFacing }, fitting));
  } else if ((lipFacing === 'inward') === (fluidSide === 'inside')) findings.push(deciding('lip-faces-fluid', 'good', { lipFacing }, fitting));
  else findings.push(deciding('lip-faces-away', 'bad', { lipFacing, fluidSide }, fitting));
  const made = seal.turns ?? 'either way';
  if (seal.turns === undefined) notChecked.push('lip-rotation');
  if (made !== 'either way') {
    if (rotation === undefined) findings.push(deciding('rotation-missing', 'unknown', { made }, commonPractice, 'rotation'));
    else if (rotation === 'both' || fromAirSide(rotation, lipFacing ?? (fluidSide === 'outside' ? 'outward' : 'inward')) !== made) findings.push(deciding('lip-made-for-other-rotation', 'bad', { made, rotation: rotation === 'both' ? 'either way' : rotation }, commonPractice));
    else findings.push(deciding('lip-rotation-right', 'good', { made }, commonPractice));
  }
  return { findings, notChecked };
};

/** A shaft that turns clockwise for who stands outside turns the other way for who looks from inside, where the air side of a lip facing outward is. */
function fromAirSide(rotation: 'clockwise' | 'counter-clockwise', lipFacing: 'inward' | 'outward'): 'clockwise' | 'counter-clockwise' {
  if (lipFacing === 'inward') return rotation;
  return rotation === 'clockwise' ? 'counter-clockwise' : 'clockwise';
}
