import { execFile } from 'node:child_process';
import { cpSync, existsSync, readFileSync, writeFileSync } from 'node:fs';
import { extname } from 'node:path';
import { promisify } from 'node:util';
import type { Page } from 'puppeteer-core';
import type { Web } from '../pages/web.js';
import { consumer, root } from './install.js';
import { shownFiles } from './readme-text.js';

/** The files that README.md shows for a framework. */
const shownFor: Readonly<Record<string, readonly string[]>> = {
  react: ['Week.tsx'],
  vue: ['Week.vue', 'vite.config.js'],
  svelte: ['Week.svelte'],
};

/** Writes the page of a framework beside the installed package, as somebody would who follows README.md. */
export function writePage(framework: string, place = framework): string {
  const folder = `${consumer}${place}/`;
  cpSync(`${root}tests/package/frameworks/${framework}`, folder, { recursive: true });
  for (const file of shownFor[framework] ?? []) writeFileSync(folder + file, shownFiles[file] ?? '');
  const harbour = shownFiles['harbour.json'] ?? '';
  writeFileSync(`${folder}harbour.json`, harbour);
  writeFileSync(`${folder}harbour.js`, `export default ${harbour}`);
  return folder;
}

/** Builds the written page of a framework with vite, for visitors or as developers see it; gives what vite complains of. */
export async function buildPage(framework: string, mode: 'production' | 'development'): Promise<string> {
  const options = ['--outDir', `built-${mode}`, '--base', './', '--mode', mode, '--logLevel', 'warn'];
  const env = { ...process.env, NODE_ENV: mode };
  const args = ['vite', 'build', consumer + framework, ...options];
  const { stdout, stderr } = await promisify(execFile)('npx', args, { cwd: root, env });
  return stdout + stderr;
}

const types: Readonly<Record<string, string>> = { '.html': 'text/html', '.js': 'text/javascript', '.css': 'text/css' };

/** What the page says to developers alone. */
const developerNotes = /^Lit is in dev mode\.|Download the React DevTools/;

/** Opens a page of the folder that the package is installed in, and keeps what the console says. */
export async function openPage(web: Web, path: string): Promise<{ page: Page; complaints: readonly string[] }> {
  const page = await web.browser.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => {
    if (!developerNotes.test(message.text())) complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(String(error)));
  await page.setRequestInterception(true);
  page.on('request', (request) => {
    const file = consumer.slice(0, -1) + new URL(request.url()).pathname;
    const contentType = types[extname(file)] ?? 'application/octet-stream';
    const isThere = existsSync(file);
    void request.respond(isThere ? { contentType, body: readFileSync(file) } : { status: 404, body: 'Not found' });
  });
  await page.goto(`${web.origin}/${path}`, { waitUntil: 'networkidle0' });
  return { page, complaints };
}
