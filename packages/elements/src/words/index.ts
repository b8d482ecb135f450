export type { ElementWords } from './element-words.js';
export { englishWords } from './english.js';
