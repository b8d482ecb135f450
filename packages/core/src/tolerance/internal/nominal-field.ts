import { lengthField } from '../../quantity/index.js';
import { largestNominalMm } from './size-steps.js';

/** Nominal size of a hole or shaft within ISO 286. */
export const nominalField = lengthField({
  label: 'nominal size',
  help: 'The size that the hole and its shaft share on the drawing',
  typical: '25',
  over: 0,
  upTo: largestNominalMm,
  unit: 'mm',
});
