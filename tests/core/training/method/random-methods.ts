import fc from 'fast-check';
import { categoryIds, eventIds, levelIds, phaseIds } from '../../../../src/training/method/ids.js';
import { formulaTexts } from '../../sheet/formula-texts.js';
import { defaultDocument } from './documents.js';

const words = { name: 'a name', says: 'a sentence', reason: 'a reason', status: 'assumption' };
const inputNames = [
  'weekly_hours',
  'season_phase',
  'athlete_level',
  'target_event',
  'strength_cap',
  'phase_taper',
  'event_marathon',
];
const constantNames = [...categoryIds.map((id) => `${id}_shortest`), 'last_slow_share'];
const conditions = formulaTexts([...inputNames, ...constantNames], { depth: 2 });
const minuteNames = categoryIds.map((id) => `${id}_minutes`);

/** Whole percentages that add up to 100, as shares. */
const shares = fc.array(fc.nat({ max: 100 }), { minLength: 4, maxLength: 4 }).map((cuts) => {
  const ends = [...cuts.sort((a, b) => a - b), 100];
  return Object.fromEntries(categoryIds.map((id, index) => [id, ((ends[index] ?? 0) - (ends[index - 1] ?? 0)) / 100]));
});

const split = fc
  .record({ when: conditions, shares })
  .map((parts) => ({ ...parts, name: 'a name', status: 'assumption', reason: 'a reason' }));
const splits = fc
  .tuple(fc.array(split, { maxLength: 3 }), split)
  .map(([some, { when: _, ...last }]) => [
    ...some.map((each, index) => ({ ...each, id: `split${String(index)}` })),
    { ...last, id: 'last' },
  ]);

const session = fc
  .tuple(fc.integer({ min: 1, max: 6 }), fc.nat({ max: 6 }), fc.nat({ max: 20 }))
  .map(([shortest, more, most]) => ({
    shortest: 5 * shortest,
    typical: 5 * (shortest + more),
    longest: 5 * (shortest + more + most),
  }));
const categories = fc
  .tuple(fc.shuffledSubarray([...categoryIds], { minLength: 5 }), fc.array(session, { minLength: 5, maxLength: 5 }))
  .map(([ids, sessions]) => ids.map((id, index) => ({ id, name: id, session: sessions[index], status: 'assumption' })));

const change = fc
  .record({
    minutes: fc.shuffledSubarray(minuteNames, { minLength: 2, maxLength: 2 }),
    when: formulaTexts([...inputNames, ...constantNames, 'value'], { depth: 1 }),
    value: fc.oneof(
      fc.constantFrom(
        '0',
        'value',
        'value / 2',
        'min(value, strength_cap)',
        'clamp(value, 20, 60)',
        'max(value - other, 0)',
      ),
      formulaTexts([...inputNames, 'value', 'other'], { depth: 1 }),
    ),
    every_second_week: fc.boolean(),
    enabled: fc.boolean(),
  })
  .map(({ minutes: [on, to], ...parts }) => ({ ...words, ...parts, kind: 'change', on, to }));
const notice = fc
  .record({
    when: formulaTexts([...inputNames, ...minuteNames], { depth: 1 }),
    level: fc.constantFrom('note', 'caution'),
  })
  .map((parts) => ({ ...words, ...parts, kind: 'notice' }));
const rules = fc
  .array(fc.oneof(change, notice), { maxLength: 5 })
  .map((each) => each.map((rule, index) => ({ ...rule, id: `rule-${String(index)}` })));

const quantities = fc
  .array(formulaTexts([...inputNames, ...minuteNames, 'slow_rounded', 'running_share'], { depth: 2 }), { maxLength: 3 })
  .map((texts) =>
    texts.map((formula, index) => ({ id: `own${String(index)}`, name: 'a name', formula, status: 'assumption' })),
  );

const inputs = fc
  .record({
    phase: fc.constantFrom(...phaseIds),
    level: fc.constantFrom(...levelIds),
    event: fc.constantFrom(...eventIds),
  })
  .map(({ phase, level, event }) => ({
    weekly_hours: { least: 0.5, most: 20, step: 0.25, start: 4 },
    season_phase: { start: phase },
    athlete_level: { start: level },
    target_event: { start: event },
    strength_cap: { least: 90, most: 120, step: 5, start: 100 },
  }));

/** Methods with other shares, limits, orders, rules and quantities; all of them documents without fault. */
export const randomMethods: fc.Arbitrary<Record<string, unknown>> = fc
  .record({
    inputs,
    splits,
    categories,
    rules,
    quantities,
    tie_order: fc.shuffledSubarray([...categoryIds], { minLength: 5 }),
  })
  .map((parts) => ({ ...defaultDocument(), ...parts, id: 'random' }));
