export { toolField, type Tool } from './tool-field.js';
