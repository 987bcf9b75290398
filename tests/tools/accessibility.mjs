// Part of npm run compile: writes shared/accessibility/statement.md. With --check it writes nothing and fails where it is stale.
import { readFile, writeFile } from 'node:fs/promises';
import { format } from 'prettier';
import { statementOf } from './accessibility-statement.mjs';

const folder = new URL('../../shared/accessibility/', import.meta.url);
const file = new URL('statement.md', folder);
const criteria = JSON.parse(await readFile(new URL('criteria.json', folder), 'utf8'));
const fresh = await format(statementOf(criteria), { parser: 'markdown', printWidth: 120, singleQuote: true });
if (!process.argv.includes('--check')) await writeFile(file, fresh);
else if (fresh !== (await readFile(file, 'utf8'))) throw new Error('statement.md is stale: run `npm run compile`');
