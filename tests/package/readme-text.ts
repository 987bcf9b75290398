import { readFileSync } from 'node:fs';
import { codeBlocks, namedFiles } from '../tools/markdown-blocks.mjs';
import { installed } from './install.js';

/** README.md as the package has it. */
export const readme = readFileSync(`${installed}README.md`, 'utf8');

/** The files that README.md shows, by their names. */
export const shownFiles: Readonly<Record<string, string>> = namedFiles(readme);

/** What README.md shows in a language, files with a name aside. */
export function pieces(language: string): string[] {
  const found = codeBlocks(readme).filter((block) => block.language === language && block.name === '');
  if (found.length === 0) throw new Error(`README.md shows no ${language}`);
  return found.map(({ text }) => text);
}

/** What stands under a heading of README.md, up to the next heading of any size. */
export function section(heading: string): string {
  const text = readme.split(/^#+ /m).find((each) => each.startsWith(`${heading}\n`));
  if (text === undefined) throw new Error(`README.md has no heading ${heading}`);
  return text;
}

/** Every `piece of code` in a text. */
export const codeIn = (text: string): string[] => [...text.matchAll(/`([^`\n]+)`/g)].map(([, code = '']) => code);
