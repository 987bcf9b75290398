import { describe, expect, it } from 'vitest';
import defaultMethod from '../../../shared/methods/default.json';
import { createPlanner } from '../../../src/plan.js';
import { problemCodes, type Problem } from '../../../src/problem.js';
import { formulaErrorCodes, type FormulaError } from '../../../src/sheet/formula/formula-error.js';
import { compileFormula } from '../../../src/sheet/formula/compile.js';
import { cellErrorReason } from '../../../src/words/cell-error-reason.js';
import { formulaErrorReason } from '../../../src/words/formula-error-reason.js';
import { loadWords } from '../../../src/words/load-words.js';
import { problemSentence } from '../../../src/words/problem-sentence.js';
import { german } from './planned.js';

const words = await loadWords('en');

const formulaError: FormulaError = { code: 'unknown-name', position: 4, found: 'strenght', values: {} };

const cases: readonly [Problem, string, string][] = [
  [
    { path: 'hours', value: 25, code: 'out-of-range', allowed: { least: 0.5, most: 20 } },
    'hours is 25; allowed: 0.5 to 20.',
    'hours ist 25; erlaubt: 0,5 bis 20.',
  ],
  [
    { path: 'share', value: -1, code: 'out-of-range', allowed: { least: 0 } },
    'share is -1; allowed: 0 or more.',
    'share ist -1; erlaubt: 0 oder mehr.',
  ],
  [
    { path: 'share', value: 2, code: 'out-of-range', allowed: { most: 1 } },
    'share is 2; allowed: 1 or less.',
    'share ist 2; erlaubt: 1 oder weniger.',
  ],
  [
    { path: 'phase', value: 'sumer', code: 'not-one-of', allowed: { choices: ['base', 'build'] } },
    'phase is "sumer"; allowed: base or build.',
    'phase ist "sumer"; erlaubt: base oder build.',
  ],
  [
    { path: 'hours', value: '4', code: 'wrong-type', allowed: { expected: 'number' } },
    'hours is "4"; it has to be a number.',
    'hours ist "4"; nötig ist eine Zahl.',
  ],
  [{ path: 'splits', value: undefined, code: 'missing', allowed: {} }, 'splits is missing.', 'splits fehlt.'],
  [
    { path: 'sport', value: 1, code: 'unknown-field', allowed: { fields: ['hours', 'phase'] } },
    'sport is not a known field here. Allowed: hours or phase.',
    'sport ist hier kein bekanntes Feld. Erlaubt: hours oder phase.',
  ],
  [
    { path: 'splits[3].when', value: 'x', code: 'unknown-field', allowed: {} },
    'splits[3].when is not a known field here.',
    'splits[3].when ist hier kein bekanntes Feld.',
  ],
  [
    { path: 'shortest', value: 22, code: 'not-a-step', allowed: { step: 5 } },
    'shortest is 22; allowed: steps of 5.',
    'shortest ist 22; erlaubt: Schritte von 5.',
  ],
  [
    { path: 'rules[1]', value: 'cap', code: 'duplicate', allowed: {} },
    'rules[1] is "cap", which is taken already; each name stands once.',
    'rules[1] ist "cap" und damit schon vergeben; jeder Name steht einmal.',
  ],
  [
    { path: 'session.typical', value: 10, code: 'wrong-order', allowed: { before: 'shortest', after: 'typical' } },
    'session.typical is 10; shortest may not be more than typical.',
    'session.typical ist 10; shortest darf nicht größer sein als typical.',
  ],
  [
    { path: 'categories', value: 'list of 4', code: 'wrong-count', allowed: { count: 4, expected: 5 } },
    'categories has 4; it has to have 5.',
    'categories hat 4; es müssen 5 sein.',
  ],
  [
    { path: 'splits[0].shares', value: 0.95, code: 'wrong-sum', allowed: { sum: 0.95, expected: 1 } },
    'splits[0].shares comes to 0.95; it has to come to 1.',
    'splits[0].shares ergibt zusammen 0,95; nötig ist 1.',
  ],
  [
    { path: 'id', value: 'A b', code: 'wrong-pattern', allowed: { pattern: '/^[a-z]+$/' } },
    'id is "A b"; allowed: text of the form /^[a-z]+$/.',
    'id ist "A b"; erlaubt: Text der Form /^[a-z]+$/.',
  ],
  [
    { path: 'name', value: 'x', code: 'too-long', allowed: { most: 500 } },
    'name is too long; allowed: 500 at most.',
    'name ist zu lang; erlaubt: höchstens 500.',
  ],
  [
    { path: '', value: null, code: 'not-json', allowed: { message: 'Unexpected end' } },
    'The document is not valid JSON: Unexpected end',
    'Das Dokument ist kein gültiges JSON: Unexpected end',
  ],
  [
    { path: '', value: null, code: 'not-json', allowed: {} },
    'The document is not valid JSON.',
    'Das Dokument ist kein gültiges JSON.',
  ],
  [
    { path: 'method-src', value: 'm.json', code: 'unreachable', allowed: { status: 404 } },
    'method-src could not be read from "m.json" (404).',
    'method-src ließ sich nicht von "m.json" lesen (404).',
  ],
  [
    { path: 'method-src', value: 'https://b.example', code: 'other-origin', allowed: { origin: 'https://a.example' } },
    'method-src is "https://b.example"; allowed: addresses of https://a.example.',
    'method-src ist "https://b.example"; erlaubt: Adressen von https://a.example.',
  ],
  [
    { path: 'rules[0].on', value: 'x', code: 'unknown-name', allowed: { names: ['slow_minutes', 'tempo_minutes'] } },
    'rules[0].on names "x", which is not known here. Allowed: slow_minutes or tempo_minutes.',
    'rules[0].on nennt "x"; das ist hier nicht bekannt. Erlaubt: slow_minutes oder tempo_minutes.',
  ],
  [
    { path: 'rules[0].on', value: 'x', code: 'unknown-name', allowed: {} },
    'rules[0].on names "x", which is not known here.',
    'rules[0].on nennt "x"; das ist hier nicht bekannt.',
  ],
  [
    { path: 'rules[0].when', value: '1 + strenght', code: 'formula', allowed: { error: formulaError } },
    'rules[0].when is "1 + strenght": “strenght” is not a known quantity (character 5).',
    'rules[0].when ist "1 + strenght": „strenght“ ist keine bekannte Größe (Zeichen 5).',
  ],
  [
    { path: 'a', value: 'a', code: 'circle', allowed: { path: ['a', 'b', 'a'] } },
    'a goes round in a circle: a → b → a.',
    'a verweist im Kreis: a → b → a.',
  ],
  [
    { path: 'slow_minutes', value: null, code: 'no-value', allowed: { cause: { code: 'division-by-zero' } } },
    'slow_minutes has no value: the formula divides by zero.',
    'slow_minutes hat keinen Wert: die Formel teilt durch null.',
  ],
  [
    { path: 'version', value: 2, code: 'newer-version', allowed: { most: 1 } },
    'version is 2, a newer version than the 1 that can be read here.',
    'version ist 2, eine neuere Version als die 1, die sich hier lesen lässt.',
  ],
  [
    { path: 'method', value: 'thursday', code: 'other-method', allowed: { method: 'weekwright' } },
    'method is "thursday"; the method in use here is weekwright.',
    'method ist "thursday"; hier gilt die Methode weekwright.',
  ],
  [
    { path: '', value: '[[[', code: 'too-deep', allowed: { most: 8 } },
    'The document is nested too deep; allowed: 8 levels at most.',
    'Das Dokument ist zu tief verschachtelt; erlaubt: höchstens 8 Ebenen.',
  ],
  [
    { path: 'link', value: '1.xyz', code: 'damaged', allowed: {} },
    'link is damaged or incomplete. Copy it again, all of it.',
    'link ist beschädigt oder unvollständig. Bitte noch einmal ganz kopieren.',
  ],
  [
    {
      path: 'season.date',
      value: '2027-02-29',
      code: 'no-date',
      allowed: { least: '1900-01-01', most: '2199-12-31' },
    },
    'season.date is "2027-02-29"; allowed: a day of the calendar such as 2027-04-11, from 1900-01-01 to 2199-12-31.',
    'season.date ist "2027-02-29"; erlaubt: ein Tag des Kalenders wie 2027-04-11, von 1900-01-01 bis 2199-12-31.',
  ],
  [
    {
      path: 'season.date',
      value: '2030-04-11',
      code: 'too-far-apart',
      allowed: { start: '2027-01-04', most: 104 },
    },
    'season.date is "2030-04-11"; allowed: a day from the week of the start (2027-01-04) on, within 104 weeks.',
    'season.date ist "2030-04-11"; erlaubt: ein Tag ab der Woche des Beginns (2027-01-04), innerhalb von 104 Wochen.',
  ],
  [
    {
      path: 'checks.answers',
      value: ['known-disease'],
      code: 'no-plan',
      allowed: { advice: 'ask-first', text: { key: 'advice.ask-first' } },
    },
    'No plan: With a known disease, and not active in the last months: ask a doctor before you start. Local rules and the judgement of licensed practitioners come first.',
    'Kein Plan: Mit einer bekannten Krankheit, und in den letzten Monaten nicht aktiv: vor dem Anfangen ärztlich fragen. Örtliche Regeln und das Urteil zugelassener Fachleute gehen vor.',
  ],
];

describe('problemSentence(words, problem)', () => {
  it.each(cases.map(([problem, english, other]) => [english, problem, other] as const))(
    '%s',
    (english, problem, other) => {
      expect(problemSentence(words, problem)).toBe(english);
      expect(problemSentence(german, problem)).toBe(other);
    },
  );

  it('has a case above for every code', () => {
    const covered = new Set(cases.map(([{ code }]) => code));
    expect(problemCodes.filter((code) => !covered.has(code))).toEqual([]);
  });

  it('cuts a long value, and stays whole where the problem brings nothing along', () => {
    const long: Problem = { path: 'id', value: 'x'.repeat(500), code: 'wrong-pattern', allowed: { pattern: 'a' } };
    expect(problemSentence(words, long).length).toBeLessThan(120);
    const bare: Problem = { path: 'a', value: undefined, code: 'formula', allowed: {} };
    expect(problemSentence(words, bare)).toBe('a is unknown: unknown.');
  });

  it('speaks of every fault of a faulty method', async () => {
    const rules = defaultMethod.rules.map((rule) =>
      rule.id === 'strength-cap' ? { ...rule, when: 'weekly_hors > 6' } : rule,
    );
    const outcome = await createPlanner({ ...defaultMethod, rules });
    const sentences = outcome.ok ? [] : outcome.problems.map((problem) => problemSentence(words, problem));
    expect(sentences).toEqual([
      'rules[0].when is "weekly_hors > 6": “weekly_hors” is not a known quantity (character 1).',
    ]);
  });
});

describe('formulaErrorReason(words, error)', () => {
  const refused = (text: string): FormulaError => {
    const compiled = compileFormula(text);
    if (compiled.ok) throw new Error(`${text} was not refused`);
    return compiled.error;
  };

  it.each([
    ['', 'the formula is empty (character 1)'],
    ['1 +', 'the formula ends too soon (character 4)'],
    ['1 + )', '“)” is out of place (character 5)'],
    ['a = 1', '“=” is not allowed in a formula (character 3)'],
    ['2 a', 'a sign is missing between two values (character 3)'],
    ['sin(1)', '“sin” is not a function that formulas may use (character 1)'],
    ['clamp(1)', '“clamp” takes 3 values and got 1 (character 1)'],
    ['abs(1, 2)', '“abs” takes 1 value and got 2 (character 1)'],
    ['min()', '“min” takes 1 to 100 values and got 0 (character 1)'],
    ['1e999', '“1e999” is too large a number (character 1)'],
    ['1'.repeat(2001), 'the formula is too long; its limit is 2,000 (character 2,001)'],
    [`${'('.repeat(25)}1${')'.repeat(25)}`, 'the formula is nested too deep; its limit is 24 (character 25)'],
  ])('of %j', (text, expected) => {
    expect(formulaErrorReason(words, refused(text))).toBe(expected);
  });

  it('leaves no gap for any code in any language', () => {
    for (const code of formulaErrorCodes)
      for (const each of [words, german]) {
        const values = { least: 1, most: 2, given: 3 };
        expect(formulaErrorReason(each, { code, position: 0, found: 'x', values })).not.toMatch(/[{}]|formula-error/);
      }
  });
});

describe('cellErrorReason(words, error, name)', () => {
  const name = (id: string): string => `<${id}>`;
  it.each([
    [{ code: 'division-by-zero' }, 'the formula divides by zero'],
    [{ code: 'too-large' }, 'the result is too large'],
    [{ code: 'not-a-number', operation: 'sqrt' }, '“sqrt” has no result for these values'],
    [{ code: 'unknown-name', name: 'x' }, '“x” is not a quantity of this method'],
    [{ code: 'circle', path: ['a', 'b'] }, 'the formulas go round in a circle: <a> → <b>'],
    [
      { code: 'depends-on', name: 'a', cause: { code: 'depends-on', name: 'b', cause: { code: 'too-large' } } },
      'it needs <a>, and there it needs <b>, and there the result is too large',
    ],
  ] as const)('of %j', (error, expected) => {
    expect(cellErrorReason(words, error, name)).toBe(expected);
  });
});
