import { readFile } from 'node:fs/promises';
import { text } from 'node:stream/consumers';
import type { CliIo } from './cli/io.js';
import { run } from './cli/run.js';
import { isoDate } from './training/season/iso-date.js';

/** The same place from src/cli.ts and from dist/cli.js. */
const packageFile = new URL('../package.json', import.meta.url);

const io: CliIo = {
  readFile: (path) => readFile(path, 'utf8'),
  readInput: () => text(process.stdin),
  version: async () => versionOf(JSON.parse(await readFile(packageFile, 'utf8'))),
  today,
  now,
  write: (answer) => process.stdout.write(answer),
  writeError: (message) => process.stderr.write(message),
};

// Only these two read a clock.

/** Days are counted where the command runs, not in Greenwich. */
function today(): string {
  const now = new Date();
  return isoDate(Math.floor((now.getTime() / 60_000 - now.getTimezoneOffset()) / 1440));
}

function now(): string {
  return new Date().toISOString().replace(/\.\d+/, '').replaceAll(/[-:]/g, '');
}

function versionOf(content: unknown): string {
  const isPackage = typeof content === 'object' && content !== null && 'version' in content;
  return isPackage ? String(content.version) : '';
}

// A reader that has seen enough (`| head`) closes the pipe: no fault of ours.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

// Not awaited at the top level: a bundle in one file runs this before the modules that are only loaded when needed.
void run(process.argv.slice(2), io).then((code) => {
  process.exitCode = code;
});
