// npm run compile: what is worked out once, when the package is made, and not in every browser:
// - the built-in method, checked and with its formulas compiled;
// - the English texts in two parts, those of the first screen and those that are fetched when somebody asks why, and
//   those that stand in for texts that another language lacks;
// - the JSON Schemas of the documents people exchange.
// With --check it writes nothing and fails where a file on disk is another than the one it would write.
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { format } from 'prettier';
import { loadTs } from './load-ts.mjs';

const root = new URL('../../', import.meta.url);
const read = async (path) => readFile(new URL(path, root), 'utf8');

const { readMethod, readMovements, compileFormulas, packedProgram, jsonSchema } =
  await loadTs('tests/tools/compile-entry.ts');

/** Texts of derivations, of problems and of what coaches' rules may name, by the first part of their key. */
const later = new Set([
  'basis',
  'board',
  'advice',
  'change',
  'check',
  'check-change',
  'check-group',
  'check-level',
  'check-missing',
  'check-not',
  'check-reason',
  'check-says',
  'checks',
  'screening',
  'screening-help',
  'clash',
  'clash-says',
  'clash-reason',
  'day',
  'differs',
  'differs-name',
  'day-short',
  'derivation',
  'fact',
  'handout',
  'keep',
  'record',
  'formula',
  'hours-reason',
  'formula-error',
  'cell-error',
  'mark',
  'notice',
  'movement',
  'movement-caution',
  'movement-how',
  'phase-term',
  'problem',
  'quantity',
  'quantity-of',
  'reason',
  'rule',
  'rule-state',
  'running',
  'running-notice',
  'running-reason',
  'says',
  'season',
  'season-change',
  'season-notice',
  'season-reason',
  'sheet',
  'stage',
  'strength',
  'strength-notice',
  'strength-reason',
  'template',
  'usual-caution',
  'week',
  'wish',
]);
/** Single texts of the same kind, and those that only the terminal needs. */
const alone = new Set(['caution.short', 'planner.caution', 'status.arithmetic', 'value.no', 'value.yes']);

const methodSource = 'shared/methods/default.json';
const movementsSource = 'shared/movements/movements.json';

async function builtInMethod() {
  const result = readMethod(JSON.parse(await read(methodSource)));
  if (!result.ok) throw new Error(`${methodSource}: ${JSON.stringify(result.problems, null, 2)}`);
  return result.value;
}

async function builtInModule() {
  const {
    $schema: _,
    week: _week,
    season: _season,
    running: _running,
    strength: _strength,
    checks: _checks,
    ...method
  } = await builtInMethod();
  const { categories, splits, rules, ...rest } = method;
  return `// Written by \`npm run compile\` from ${methodSource}. Change that, not this.
import type { PackedProgram } from '../../sheet/packed-program.js';
import type { Method } from './document.js';
import { withNames } from './with-names.js';

export const builtInMethod: Method = {
  ...${JSON.stringify(rest)},
  categories: withNames('category', ${JSON.stringify(nameless('category', categories))}),
  splits: withNames('split', ${JSON.stringify(nameless('split', splits))}),
  rules: withNames('rule', ${JSON.stringify(nameless('rule', rules))}),
};

export const builtInProgram: PackedProgram = ${JSON.stringify(packedProgram(method))};
`;
}

/** Names of the built-in method follow from its ids: they are worth a tenth of a kilobyte. */
function nameless(group, parts) {
  return parts.map(({ name, ...part }) => {
    if (name.key !== `${group}.${part.id}`) throw new Error(`${group} ${part.id} has another name than its id says`);
    return part;
  });
}

/** Fetched only where sessions are laid on days. */
async function builtInWeek() {
  const { week } = await builtInMethod();
  return `// Written by \`npm run compile\` from ${methodSource}. Change that, not this.
import type { WeekRules } from './document.js';

export const builtInWeek: WeekRules = ${JSON.stringify(week)};
`;
}

/** Fetched only where a season is planned. */
async function builtInSeason() {
  const { season } = await builtInMethod();
  return `// Written by \`npm run compile\` from ${methodSource}. Change that, not this.
import type { SeasonRules } from './season-rules.js';

export const builtInSeason: SeasonRules = ${JSON.stringify(season)};
`;
}

/** Fetched only where running is made concrete. */
async function builtInRunning() {
  const { running } = await builtInMethod();
  return `// Written by \`npm run compile\` from ${methodSource}. Change that, not this.
import type { RunningRules } from './running-rules.js';

export const builtInRunning: RunningRules = ${JSON.stringify(running)};
`;
}

/** Fetched only where strength sessions are filled. */
async function builtInStrength() {
  const { strength } = await builtInMethod();
  return `// Written by \`npm run compile\` from ${methodSource}. Change that, not this.
import type { StrengthRules } from './strength-rules.js';

export const builtInStrength: StrengthRules = ${JSON.stringify(strength)};
`;
}

/** Fetched only where plans are held against what is known. */
async function builtInChecks() {
  const { checks } = await builtInMethod();
  return `// Written by \`npm run compile\` from ${methodSource}. Change that, not this.
import type { CheckRules } from './check-rules.js';

export const builtInChecks: CheckRules = ${JSON.stringify(checks)};
`;
}

/** The library of movements, which a coach's own come to. */
async function builtInMovements() {
  const result = readMovements(JSON.parse(await read(movementsSource)));
  if (!result.ok) throw new Error(`${movementsSource}: ${JSON.stringify(result.problems, null, 2)}`);
  return `// Written by \`npm run compile\` from ${movementsSource}. Change that, not this.
import type { Movement } from '../method/strength-rules.js';

export const builtInMovements: readonly Movement[] = ${JSON.stringify(result.value)};
`;
}

async function builtInFormulas() {
  return `// Written by \`npm run compile\` from ${methodSource}. Change that, not this.
import type { FormulaBook } from '../../sheet/formula/compiled-formula.js';

/** The formulas of the built-in method, compiled: other methods use many of them too. */
export const builtInFormulas: FormulaBook = ${JSON.stringify(compileFormulas(await builtInMethod()))};
`;
}

/** Evidence as it is cited: what was claimed and how it was read is for whoever checks, not for a page. */
async function citedEvidence() {
  const source = 'shared/evidence/evidence.json';
  const entries = JSON.parse(await read(source)).map(({ id, cite, doi }) => ({ id, cite, doi }));
  return `// Written by \`npm run compile\` from ${source}. Change that, not this.
import type { Citation } from './citation.js';

export const evidence: readonly Citation[] = ${JSON.stringify(entries)};
`;
}

async function englishTexts(part) {
  const source = 'shared/locales/en.json';
  const texts = Object.entries(JSON.parse(await read(source)));
  const wanted = texts.filter(([key]) => (later.has(key.split('.')[0]) || alone.has(key)) === (part === 'rest'));
  return `// Written by \`npm run compile\` from ${source}. Change that, not this.
import type { Messages } from './phrases.js';

export const ${part}: Messages = ${JSON.stringify(Object.fromEntries(wanted))};
`;
}

/** What a language lacks is said in English; with none lacking, nobody fetches English besides their own language. */
async function textGaps() {
  const english = JSON.parse(await read('shared/locales/en.json'));
  const files = await readdir(new URL('shared/locales/', root));
  const languages = files.flatMap((file) => /^(?!en\.)(.+)\.json$/.exec(file)?.[1] ?? []).sort();
  const gapsOf = async (language) => {
    const own = JSON.parse(await read(`shared/locales/${language}.json`));
    return Object.fromEntries(Object.entries(english).filter(([key]) => !Object.hasOwn(own, key)));
  };
  const gaps = await Promise.all(languages.map(async (language) => [language, await gapsOf(language)]));
  const lacking = gaps.filter(([, texts]) => Object.keys(texts).length > 0);
  return `// Written by \`npm run compile\` from shared/locales. Change those, not this.
import type { Messages } from './phrases.js';

/** English texts that stand in for those that a language has not, by the language; a test reports each. */
export const gaps: Readonly<Record<string, Messages>> = ${JSON.stringify(Object.fromEntries(lacking))};
`;
}

const targets = {
  'src/training/method/built-in.ts': builtInModule,
  'src/training/method/built-in-formulas.ts': builtInFormulas,
  'src/training/method/built-in-week.ts': builtInWeek,
  'src/training/method/built-in-season.ts': builtInSeason,
  'src/training/method/built-in-running.ts': builtInRunning,
  'src/training/method/built-in-strength.ts': builtInStrength,
  'src/training/method/built-in-checks.ts': builtInChecks,
  'src/training/strength/built-in-movements.ts': builtInMovements,
  'src/words/evidence.ts': citedEvidence,
  'src/words/english-first.ts': () => englishTexts('first'),
  'src/words/english-rest.ts': () => englishTexts('rest'),
  'src/words/gaps.ts': textGaps,
  'shared/schema/method.schema.json': () => JSON.stringify(jsonSchema('method', root)),
  'shared/schema/plan.schema.json': () => JSON.stringify(jsonSchema('plan', root)),
  'shared/schema/file.schema.json': () => JSON.stringify(jsonSchema('file', root)),
};

for (const [path, make] of Object.entries(targets)) {
  const text = await format(await make(), { filepath: path, printWidth: 120, singleQuote: true });
  const current = await read(path).catch(() => '');
  if (!process.argv.includes('--check')) await writeFile(new URL(path, root), text);
  else if (current !== text) throw new Error(`${path} is stale: run \`npm run compile\``);
}
