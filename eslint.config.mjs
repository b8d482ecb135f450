import lit from 'eslint-plugin-lit';
import tseslint from 'typescript-eslint';

const noClockNoChance = {
  'no-restricted-globals': ['error', { name: 'Date', message: 'core has no clock: take a date as input' }],
  'no-restricted-properties': ['error', { object: 'Math', property: 'random', message: 'core has no chance: take a seed as input' }],
};

export default tseslint.config(
  { ignores: ['**/dist/**', '**/dist-types/**', '**/node_modules/**', 'packages/core/src/tables/generated/**', '**/*.mjs', '**/*.js', '**/vite.config.ts', 'apps/bench/words-in-two.ts', 'vitest.config.ts'] },
  {
    files: ['**/*.ts'],
    extends: [...tseslint.configs.recommendedTypeChecked],
    languageOptions: { parserOptions: { project: ['packages/*/tsconfig.json', 'apps/*/tsconfig.json', 'tests/tsconfig.json'], tsconfigRootDir: import.meta.dirname } },
    rules: {
      '@typescript-eslint/no-explicit-any': 'error',
      '@typescript-eslint/consistent-type-imports': 'error',
      '@typescript-eslint/no-unused-vars': ['error', { argsIgnorePattern: '^_', varsIgnorePattern: '^_' }],
      // Our records of functions are closures without `this`; interfaces write them as methods.
      '@typescript-eslint/unbound-method': 'off',
      '@typescript-eslint/switch-exhaustiveness-check': ['error', { considerDefaultExhaustiveForUnions: true }],
      'no-restricted-syntax': [
        'error',
        { selector: 'TSEnumDeclaration', message: 'use a union of literals' },
        { selector: 'ExportDefaultDeclaration', message: 'export by name' },
        { selector: 'TSParameterProperty', message: 'declare the field' },
      ],
    },
  },
  { files: ['packages/core/src/**/*.ts'], ignores: ['**/*.test.ts'], rules: noClockNoChance },
  { files: ['packages/elements/src/**/*.ts', 'apps/bench/src/**/*.ts'], extends: [lit.configs['flat/recommended']] },
  { files: ['tests/closing-line-reporter.ts'], rules: { 'no-restricted-syntax': 'off' } },
);
