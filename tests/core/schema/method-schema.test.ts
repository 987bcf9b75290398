import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { readMethod } from '../../../src/training/method/read-method.js';
import { methodSchema } from '../../../src/training/method/schema.js';
import { patience, runs } from '../../reference/runs.js';
import { changed, changesOf } from './mutations.js';
import { readJson, validator } from './published.js';

const hasShape = validator('method');
const documents = ['shared/methods/default.json', 'demo/club-method.json'];
const ownQuantity = {
  id: 'easy_share',
  name: 'easy share',
  formula: 'slow_minutes / planned_minutes',
  status: 'assumption',
};

/** Codes and paths of the problems that readMethod finds. */
function problemsOf(document: unknown): string[] {
  const outcome = readMethod(document);
  return outcome.ok ? [] : outcome.problems.map(({ path, code }) => `${path}: ${code}`);
}

test.each(documents)('%s is a method', (path) => {
  hasShape(readJson(path));
  expect(hasShape.errors).toBeNull();
});

/** What goes across fields: JSON Schema cannot say it, and only readMethod sees it. */
const acrossFields = [
  /^((categories|splits|rules|quantities)\[\d+\]\.id|tie_order\[\d+\]|rules\[\d+\]\.to): duplicate$/,
  /^week\.((clashes|templates)\[\d+\]\.(id|then\[\d+\])|(order_in_day|one_a_day)\[\d+\]): duplicate$/,
  /^inputs\.\w+\.most: wrong-order$/,
  /^inputs\.\w+\.start: out-of-range$/,
  /^categories\[\d+\]\.session\.(typical|longest): wrong-order$/,
  /^categories\[\d+\]\.session\.(shortest|longest): not-a-step$/,
  /^splits\[\d+\]\.shares: wrong-sum$/,
  /^splits\[\d+\]\.when: (missing|unknown-field)$/,
  /^running\.(kinds|heart\.(bands|estimates))\[\d+\]\.id: duplicate$/,
  /^running\.(kinds\[\d+\]\.(uptake|effort)|heart\.spread|energy\.(cross|strength))\.most: wrong-order$/,
  /^running\.(equal_times\.distances\[\d+\]|heart\.bands\[\d+\]\.(uptake|reserve|highest)): wrong-order$/,
  /^running\.kinds\[\d+\]\.bouts\.rest: out-of-range$/,
  /^running\.heart\.bands\[\d+\]\.id: not-one-of$/,
  /^strength\.((stages|patterns|movements)\[\d+\]\.id|order\[\d+\]|sessions\[\d+\]\[\d+\]): duplicate$/,
  /^strength\.stages\[\d+\]\.(phases|levels): (missing|unknown-field)$/,
  /^strength\.(stages\[\d+\]\.doses\.\w+\.sets\.most|maximum\.table\[\d+\]\.(repetitions|share)|progress\.most|dose\.(sessions|main)\.most): wrong-order$/,
  /^checks\.(list|differences|activity\.kinds)\[\d+\]\.id: duplicate$/,
  /^checks\.activity\.vigorous: wrong-order$/,
  /^checks\.list\[\d+\]\.limits\[\d+\]\.((in_line|caution|ages)\.\w+: wrong-order|in_line: missing)$/,
];

describe('the schema and readMethod', () => {
  test.each(documents)(
    'say the same of changed copies of %s, but for what goes across fields',
    (path) => {
      const document = { ...(readJson(path) as object), quantities: [ownQuantity] };
      const accepted = { schema: 0, readMethod: 0 };
      fc.assert(
        fc.property(changesOf(document), (changes) => {
          const copy = changed(document, changes);
          const problems = problemsOf(copy);
          if (hasShape(copy)) accepted.schema += 1;
          if (problems.length === 0) accepted.readMethod += 1;
          expect(hasShape(copy), problems.join('\n')).toBe(v.is(methodSchema, copy));
          if (!hasShape(copy)) expect(problems).not.toEqual([]);
          else expect(problems.filter((problem) => !acrossFields.some((pattern) => pattern.test(problem)))).toEqual([]);
        }),
        runs(500, 100_000),
      );
      // The copies are of all kinds: some are fine, some only look fine, most are not.
      expect(accepted.readMethod).toBeGreaterThan(0);
      expect(accepted.schema).toBeGreaterThan(accepted.readMethod);
    },
    patience,
  );

  test.each([
    ['a split that has the same id as another', ['splits', 0, 'id'], 'taper', 'splits[1].id: duplicate'],
    ['a range the wrong way round', ['inputs', 'strength_cap', 'most'], 80, 'inputs.strength_cap.most: wrong-order'],
    ['a start outside its range', ['inputs', 'weekly_hours', 'start'], 30, 'inputs.weekly_hours.start: out-of-range'],
    [
      'a longest session off the step',
      ['categories', 0, 'session', 'longest'],
      151,
      'categories[0].session.longest: not-a-step',
    ],
    ['shares that add up to less than 1', ['splits', 3, 'shares', 'slow'], 0.2, 'splits[3].shares: wrong-sum'],
    ['a last split with a condition', ['splits', 3, 'when'], '1', 'splits[3].when: unknown-field'],
  ] as const)('differ on %s', (_, path, value, problem) => {
    const document = structuredClone(readJson('shared/methods/default.json'));
    const holder = path.slice(0, -1).reduce((inner, key) => Reflect.get(inner as object, key) as unknown, document);
    Reflect.set(holder as object, path.at(-1) ?? '', value);
    expect(hasShape(document)).toBe(true);
    expect(problemsOf(document)).toContain(problem);
  });

  test.each([
    [500, []],
    [501, ['name: too-long']],
  ])('agree on a name of %i characters, each of which is two units to JavaScript', (count, problems) => {
    const document: unknown = { ...(readJson('shared/methods/default.json') as object), name: '🏃'.repeat(count) };
    expect([hasShape(document), problemsOf(document)]).toEqual([problems.length === 0, problems]);
  });
});
