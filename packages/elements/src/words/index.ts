export type { ElementWords } from './element-words.js';
export { englishWords } from './english.js';
export { germanWords } from './german.js';
export { speak, type SpokenLanguage } from './speak.js';
