import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import defaultMethod from '../../../shared/methods/default.json';
import { noticeCodes } from '../../../src/plan/document.js';
import { seasonChangeKinds, seasonNoticeCodes } from '../../../src/plan/season/document.js';
import { byHandReasons } from '../../../src/plan/season/wishes.js';
import { weekStates } from '../../../src/plan/week/document.js';
import { problemCodes } from '../../../src/problem.js';
import { functionArity } from '../../../src/sheet/formula/functions.js';
import { formulaErrorCodes } from '../../../src/sheet/formula/formula-error.js';
import { categoryIds, eventIds, levelIds, phaseIds, statusIds } from '../../../src/training/method/ids.js';
import { adviceIds, checkGroupIds } from '../../../src/training/method/check-rules.js';
import { upkeepIds } from '../../../src/training/method/season-rules.js';
import { checkLevels } from '../../../src/training/checks/check-levels.js';
import { answerIds, screen } from '../../../src/training/checks/screening.js';
import { hoursReasons } from '../../../src/training/season/season-hours.js';
import { changeKinds, wishKinds } from '../../../src/training/week/wish.js';
import { languages } from '../../../src/words/load-words.js';
import type { Message, Messages } from '../../../src/words/phrases.js';
import { measures } from '../../../src/words/quantity-meaning.js';
import { unitOfWeek } from '../../../src/words/quantity-value.js';
import { arabic } from '../../../src/cli/texts/ar.js';
import { german } from '../../../src/cli/texts/de.js';
import { english as commandEnglish } from '../../../src/cli/texts/en.js';
import { spanish } from '../../../src/cli/texts/es.js';
import { french } from '../../../src/cli/texts/fr.js';

const folder = new URL('../../../shared/locales/', import.meta.url);
const source = new URL('../../../src/', import.meta.url);

const locales: Readonly<Record<string, Messages>> = Object.fromEntries(
  readdirSync(folder)
    .filter((file) => file.endsWith('.json'))
    .map((file) => [file.replace('.json', ''), readMessages(new URL(file, folder))]),
);
const english = locales['en'] ?? {};

function readMessages(file: URL): Messages {
  return JSON.parse(readFileSync(file, 'utf8')) as Messages;
}

const forms = (message: Message | undefined): string[] =>
  typeof message === 'string' ? [message] : Object.values(message ?? {});
const placeholders = (message: Message | undefined): string[] =>
  [...new Set(forms(message).flatMap((form) => form.match(/\{\w+\}/g) ?? []))].sort();

/** Keys that the built-in method names: {"key": "..."} wherever it stands. */
function methodKeys(value: unknown): string[] {
  if (typeof value !== 'object' || value === null) return [];
  if ('key' in value && typeof value.key === 'string') return [value.key];
  return Object.values(value).flatMap(methodKeys);
}

const upTo = (last: number, first = 0): string[] =>
  Array.from({ length: last - first + 1 }, (_, index) => String(first + index));
const prefixed = (prefix: string, ids: readonly string[]): string[] => ids.map((id) => `${prefix}.${id}`);
const cellErrorCodes = ['division-by-zero', 'not-a-number', 'too-large', 'unknown-name', 'circle', 'depends-on'];

/** Keys that are put together at run time, from every id that can be in them. */
const composedKeys = [
  ...prefixed('category', categoryIds),
  ...prefixed('phase', phaseIds),
  ...prefixed('headline.phase', phaseIds),
  ...prefixed('level', levelIds),
  ...prefixed('event', eventIds),
  ...prefixed('status', statusIds),
  ...prefixed('problem', problemCodes),
  ...prefixed('problem.expected', ['number', 'text', 'list', 'object', 'true or false']),
  ...prefixed('formula-error', formulaErrorCodes),
  ...prefixed('formula', [...Object.keys(functionArity), 'and', 'or', 'not', 'mod', 'value', 'then', 'otherwise']),
  ...prefixed('cell-error', cellErrorCodes),
  ...prefixed(
    'notice',
    noticeCodes.filter((code) => code !== 'rule'),
  ),
  ...prefixed('quantity', [...unitOfWeek.keys()]),
  ...prefixed('quantity-of', [...measures, 'split', 'split-share', 'notice']),
  ...prefixed('derivation.step', ['acted', 'idle', 'off']),
  ...prefixed('hours-in-words', upTo(12, 1)),
  ...prefixed('day', upTo(6)),
  ...prefixed('day-short', upTo(6)),
  ...prefixed('week.number', upTo(7, 2)),
  ...prefixed('week', ['more-minutes', 'fewer-minutes', 'more-sessions', 'fewer-sessions']),
  ...prefixed('week.verdict', [...weekStates, 'laid.free']),
  ...prefixed('week', ['way-out', 'way-out.free']),
  ...prefixed('wish', [...wishKinds, 'day-minutes.none', 'minutes.none']),
  ...prefixed('change', [...changeKinds, 'fewer-rest-days.none', 'settle-sessions.one', 'settle-sessions.none']),
  ...prefixed(
    'hours-reason',
    hoursReasons.filter((reason) => reason !== 'by-hand'),
  ),
  ...prefixed('hours-reason.by-hand', byHandReasons),
  ...prefixed('season.by-hand', byHandReasons),
  ...prefixed('season.upkeep', upkeepIds),
  ...prefixed('season-notice', [...seasonNoticeCodes, 'steep-week.back', 'after-break.caution']),
  ...prefixed('season-change', seasonChangeKinds),
  ...prefixed('advice', adviceIds),
  ...prefixed('screening', answerIds),
  ...prefixed('screening-help', screen(answerIds).cautions),
  ...prefixed('check-group', checkGroupIds),
  ...prefixed('check-level', [...checkLevels, 'unknown']),
  ...prefixed('check-missing', ['days', 'season', 'equal-days', 'nothing']),
  ...prefixed('check-missing', ['hours_before', 'longest_run_before', 'own_load', 'own_days']),
  ...prefixed('checks.unit', ['days', 'sessions']),
  ...prefixed('checks.range', ['between', 'from', 'until', 'caution-below', 'caution-above']),
  ...prefixed('checks.headline', checkLevels),
  ...['week', 'mean', 'deviation', 'monotony', 'strain'].flatMap((id) => prefixed(`checks.load.${id}`, ['how'])),
  ...prefixed('checks.load', ['week', 'mean', 'deviation', 'monotony', 'strain', 'number', 'this', 'own', 'about']),
  ...prefixed('phase-term', phaseIds),
  ...prefixed('season.box', ['hand', 'table', 'shape', 'reach', 'later', 'compare', 'basis']),
  ...prefixed('season.table', ['week', 'from', 'phase', 'hours', 'load', 'longest-run', 'notes']),
  ...prefixed('season.summary', ['weeks', 'most', 'total', 'longest-run', 'load', 'cautions']),
];

/** Keys that stand whole in the source: say('headline.none'). */
function spokenKeys(): string[] {
  const files = readdirSync(source, { recursive: true, encoding: 'utf8' });
  const read = files.filter((file) => file.endsWith('.ts')).map((file) => readFileSync(new URL(file, source), 'utf8'));
  return read.flatMap((text) => [...text.matchAll(/words\.say\('([^']+)'/g)].map(([, key]) => key ?? ''));
}

describe('shared/locales', () => {
  it('has a file for every language that can be loaded, and no other', () => {
    expect(Object.keys(locales).sort()).toEqual([...languages].sort());
  });

  it.each(Object.keys(locales))('%s has every text that English has, and no other', (language) => {
    const own = Object.keys(locales[language] ?? {});
    const missing = Object.keys(english).filter((key) => !own.includes(key));
    const surplus = own.filter((key) => !Object.hasOwn(english, key));
    expect({ missing, surplus }).toEqual({ missing: [], surplus: [] });
  });

  it.each(Object.keys(locales))('%s has the same values to fill in as English', (language) => {
    const differing = Object.keys(english).filter(
      (key) => placeholders(locales[language]?.[key]).join() !== placeholders(english[key]).join(),
    );
    expect(differing).toEqual([]);
  });

  it.each(Object.keys(locales))('%s has the plural forms that the language asks for', (language) => {
    const needed = new Intl.PluralRules(language).resolvedOptions().pluralCategories;
    const lacking = Object.entries(locales[language] ?? {}).filter(
      ([, message]) => typeof message !== 'string' && needed.some((form) => !Object.hasOwn(message, form)),
    );
    expect(lacking).toEqual([]);
  });

  it.each(Object.keys(locales))('%s is calm: no exclamation marks, no empty texts, no double spaces', (language) => {
    const loud = Object.entries(locales[language] ?? {}).filter(([, message]) =>
      forms(message).some((form) => /!|^\s*$| {2}|^\s|\s$/.test(form)),
    );
    expect(loud).toEqual([]);
  });

  it('has every text that the built-in method names', () => {
    const keys = methodKeys(defaultMethod);
    expect(keys.length).toBeGreaterThan(30);
    expect(keys.filter((key) => !Object.hasOwn(english, key))).toEqual([]);
  });

  it('has a text for every id and code there is', () => {
    expect(composedKeys.filter((key) => !Object.hasOwn(english, key))).toEqual([]);
  });

  it('has every text that the source says by its key', () => {
    const keys = spokenKeys();
    expect(keys.length).toBeGreaterThan(20);
    expect([...new Set(keys)].filter((key) => !Object.hasOwn(english, key))).toEqual([]);
  });

  it('keeps its groups together', () => {
    for (const messages of Object.values(locales)) {
      const groups = Object.keys(messages).map((key) => key.split('.')[0]);
      const beginnings = groups.filter((group, index) => group !== groups[index - 1]);
      expect(beginnings).toEqual([...new Set(beginnings)]);
      expect(beginnings).toEqual([...beginnings].sort());
    }
  });
});

describe("the command's own texts", () => {
  it.each(Object.entries({ arabic, german, spanish, french }))(
    'are all there in %s, with the same values to fill in',
    (_, own: Messages) => {
      expect(Object.keys(own)).toEqual(Object.keys(commandEnglish));
      const differing = Object.entries(commandEnglish).filter(
        ([key, text]) => placeholders(text).join() !== placeholders(own[key]).join(),
      );
      expect(differing).toEqual([]);
    },
  );
});
