export * from './result/index.js';
