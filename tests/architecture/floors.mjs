// The floors of the house, from the ground up; eslint.config.js and the tests beside this file both read the table.
const plan = ['problem', 'sheet', 'training', 'plan'];
const core = [...plan, 'exchange', 'words'];

/**
 * `files` of a floor, the other floors it `knows`, and the `packages` it may import: one thing, or all that begins so where
 * the name ends in `/` or `:`. A pure floor has no browser, Node.js, clock or randomness.
 */
export const floors = [
  { name: 'problem', files: ['src/problem.ts'], knows: [], packages: [], isPure: true },
  { name: 'sheet', files: ['src/sheet/'], knows: ['problem'], packages: ['mathjs/number'], isPure: true },
  { name: 'training', files: ['src/training/'], knows: ['problem', 'sheet'], packages: ['valibot'], isPure: true },
  { name: 'plan', files: ['src/plan.ts', 'src/plan/'], knows: plan.slice(0, 3), packages: ['valibot'], isPure: true },
  { name: 'exchange', files: ['src/exchange/'], knows: plan, packages: [], isPure: true },
  { name: 'words', files: ['src/words/'], knows: plan, packages: [], isPure: true },
  { name: 'core', files: ['src/core.ts'], knows: core, packages: [], isPure: true },
  {
    name: 'element',
    files: ['src/element/', 'src/index.ts', 'src/define.ts'],
    knows: core,
    packages: ['lit', 'lit/', 'd3-array', 'idb'],
    isPure: false,
  },
  {
    name: 'frameworks',
    files: ['src/frameworks/'],
    knows: ['element'],
    packages: ['lit', 'react', 'vue', 'svelte/elements'],
    isPure: false,
  },
  // Not called after its folder: a file of another floor is called frame.
  { name: 'framed page', files: ['src/frame/'], knows: ['problem', 'plan', 'element'], packages: [], isPure: false },
  { name: 'cli', files: ['src/cli/', 'src/cli.ts'], knows: core, packages: ['node:', 'd3-dsv'], isPure: false },
];

/** @param {string} entry @param {string} name */
export const covers = (entry, name) => entry === name || (/[/:]$/.test(entry) && name.startsWith(entry));
