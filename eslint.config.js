import lit from 'eslint-plugin-lit';
import litA11y from 'eslint-plugin-lit-a11y';
import wc from 'eslint-plugin-wc';
import { defineConfig, globalIgnores } from 'eslint/config';
import tseslint from 'typescript-eslint';
import { floors } from './tests/architecture/floors.mjs';

const typeAware = { parserOptions: { projectService: true } };
const filesOf = ({ files }) => files.map((path) => (path.endsWith('/') ? `${path}**/*.ts` : path));

/** A floor may not import from floors that it does not know. */
const keepApart = (floor) => {
  const unknown = floors.map(({ name }) => name).filter((name) => name !== floor.name && !floor.knows.includes(name));
  const message = `The floor "${floor.name}" may import only from itself, shared, and: ${floor.knows.join(', ')}.`;
  return {
    files: filesOf(floor),
    rules: {
      'no-restricted-imports': [
        'error',
        {
          patterns: [
            { regex: `^\\.+/(.*/)?(${unknown.join('|')})(/|\\.js$)`, message },
            ...(floor.isPure
              ? [{ regex: '^(lit|node:)', message: 'A pure floor knows neither page nor Node.js.' }]
              : []),
          ],
        },
      ],
    },
  };
};

const keepPure = {
  files: floors.filter(({ isPure }) => isPure).flatMap(filesOf),
  rules: {
    'no-restricted-properties': [
      'error',
      { object: 'Date', property: 'now', message: 'Dates come in as arguments.' },
      { object: 'Math', property: 'random', message: 'The same input gives the same plan.' },
    ],
    'no-restricted-syntax': [
      'error',
      { selector: 'NewExpression[callee.name="Date"][arguments.length=0]', message: 'Dates come in as arguments.' },
    ],
  },
};

const isolatedTest =
  'MemberExpression[object.name=/^(describe|it|suite|test)$/][property.name=/^(fails|only|skip|skipIf|runIf|todo)$/]';

export default defineConfig(
  globalIgnores(['dist', 'coverage', 'reports', 'tests/package/consumer']),
  tseslint.configs.recommended,
  {
    linterOptions: { reportUnusedDisableDirectives: 'error' },
    rules: {
      '@typescript-eslint/no-unused-vars': [
        'error',
        { ignoreRestSiblings: true, argsIgnorePattern: '^_', varsIgnorePattern: '^_' },
      ],
    },
  },
  {
    files: ['src/**/*.ts'],
    extends: [tseslint.configs.strictTypeChecked],
    languageOptions: typeAware,
    rules: {
      'max-params': ['error', 3],
      'no-console': 'error',
      'no-eval': 'error',
      'no-new-func': 'error',
      '@typescript-eslint/no-confusing-void-expression': ['error', { ignoreVoidReturningFunctions: true }],
      '@typescript-eslint/no-extraneous-class': ['error', { allowConstructorOnly: true }],
      '@typescript-eslint/restrict-template-expressions': ['error', { allowNumber: true }],
      '@typescript-eslint/switch-exhaustiveness-check': ['error', { considerDefaultExhaustiveForUnions: true }],
    },
  },
  floors.map(keepApart),
  keepPure,
  {
    files: ['src/sheet/**/*.ts'],
    rules: { '@typescript-eslint/no-non-null-assertion': 'off' }, // the linker made the numbers that index registers
  },
  {
    files: ['src/training/week/**/*.ts'],
    rules: { '@typescript-eslint/no-non-null-assertion': 'off' }, // days and kinds index arrays made for just them
  },
  {
    files: ['src/element/**/*.ts'],
    extends: [lit.configs['flat/recommended'], wc.configs['flat/best-practice']],
    plugins: { 'lit-a11y': litA11y },
    rules: {
      ...litA11y.configs.recommended.rules,
      '@typescript-eslint/unbound-method': 'off', // lit binds listeners to the element
    },
  },
  {
    files: ['tests/**/*.ts'],
    extends: [tseslint.configs.recommendedTypeChecked],
    languageOptions: typeAware,
    rules: {
      'no-restricted-syntax': ['error', { selector: isolatedTest, message: 'Every test runs.' }],
      '@typescript-eslint/no-unused-expressions': 'off', // chai asserts by reading a property
      // chai's `equal` says it gives a promise, for the sake of a plugin, and gives none.
      '@typescript-eslint/no-floating-promises': [
        'error',
        { allowForKnownSafeCalls: [{ from: 'package', package: 'chai', name: 'Equal' }] },
      ],
    },
  },
);
