// npm run bench: what one event costs, as a multiple of the same work written by hand, and what a visitor downloads.
// Then how long weeks take to lay, against a general solver.
//   -- --rounds 41      more rounds than usual
//   -- --phone          then pages on a slow phone, in Chromium, once built: a slider that moves, and loading
//   -- --batteries      then the random tests, each as often as it may run (RUNS_FACTOR, 1000 if not set): takes an hour or so
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { loadTs } from '../tools/load-ts.mjs';
import { measureSizes } from '../tools/size.mjs';
import { printDrag } from './drag.mjs';
import { printLoad } from './load.mjs';

const { values } = parseArgs({
  options: {
    rounds: { type: 'string', default: '21' },
    phone: { type: 'boolean', default: false },
    batteries: { type: 'boolean', default: false },
  },
});

const times = (ratio) => `${ratio < 20 ? ratio.toFixed(1) : Math.round(ratio)} ×`;

async function printRaces(rounds) {
  const { finishes } = await loadTs('tests/bench/bench.ts');
  console.log(`Medians of ${rounds} rounds in which all took turns; in brackets the middle half of the rounds.`);
  for (const { title, finish } of finishes(rounds)) {
    console.log(`\n${title}`);
    for (const { name, ratio, quartiles, microseconds } of finish)
      console.log(
        `  ${name.padEnd(38)}${times(ratio).padStart(9)}  ${`(${quartiles.map(times).join(' to ')})`.padEnd(20)}${microseconds.toFixed(2).padStart(10)} µs`,
      );
  }
}

async function printWeeks() {
  const { weekFinishes } = await loadTs('tests/bench/week.ts');
  console.log(
    '\nWeeks laid at least cost; in brackets how many times as long a general solver takes, by week and in all',
  );
  for await (const { title, weeks, median, worst, underFifty, peer } of weekFinishes())
    console.log(
      `  ${`${weeks} ${title}`.padEnd(38)}${median.toFixed(2).padStart(8)} ms, at worst ${worst.toFixed(0)} ms, ${Math.floor(100 * underFifty)} % under 50 ms${peer ? `  (${times(peer.median)}, ${times(peer.total)})` : ''}`,
    );
}

function printSizes() {
  console.log('\nDownloads, gzip');
  for (const { name, bytes, budget } of measureSizes())
    console.log(`  ${name.padEnd(38)}${(bytes / 1000).toFixed(1).padStart(6)} kB of ${budget / 1000} kB`);
}

function runBatteries() {
  const root = fileURLToPath(new URL('../..', import.meta.url));
  const command = [
    'vitest',
    'run',
    '--config',
    'tests/vitest.config.ts',
    '--project',
    'core',
    'tests/core',
    'tests/reference',
  ];
  const env = { ...process.env, RUNS_FACTOR: process.env.RUNS_FACTOR ?? '1000' };
  return (
    spawnSync('npx', command, { cwd: root, env, stdio: 'inherit', shell: process.platform === 'win32' }).status ?? 1
  );
}

await printRaces(Number(values.rounds));
await printWeeks();
printSizes();
if (values.phone) {
  await printDrag();
  await printLoad();
}
if (values.batteries) process.exitCode = runBatteries();
