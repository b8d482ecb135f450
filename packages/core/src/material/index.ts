export { expansionScatterShare, findMaterial, materialNames, type Material } from './find-material.js';
export { materialField, type OwnMaterial } from './material-field.js';
export { materialProperties, type MaterialProperties } from './material-properties.js';
export { partMaterial, partMaterialField, type PartMaterial } from './part-material.js';
