import fc from 'fast-check';
import type { ClashMember, WeekRules } from '../../../src/training/method/document.js';
import { categoryIds } from '../../../src/training/method/ids.js';
import { clash, defaultRules } from './default-rules.js';

const members: readonly ClashMember[] = [...categoryIds, 'long'];

const someMembers = fc.subarray([...members], { minLength: 1, maxLength: 3 });

const pairs = fc
  .record({ first: someMembers, then: someMembers, days_apart: fc.integer({ min: 0, max: 3 }), cost: fc.nat(12) })
  .map((shape) => clash({ kind: 'pair', ...shape }));

const counts = fc
  .record({
    kind: fc.constantFrom('crowded-day', 'missed-minutes', 'session-count'),
    cost: fc.nat(5),
  })
  .map(clash);

/** Tables of clashes like a coach's own: other costs, other pairs, overlapping members, several of a kind. */
export const ownRules: fc.Arbitrary<WeekRules> = fc
  .record({
    pairs: fc.array(pairs, { maxLength: 6 }),
    counts: fc.array(counts, { maxLength: 4 }),
    group: fc.oneof(fc.constant(defaultRules.one_a_day), fc.subarray([...categoryIds], { maxLength: 3 })),
  })
  .map(({ pairs, counts, group }) => ({
    ...defaultRules,
    one_a_day: group,
    clashes: [...pairs, ...counts].map((each, index) => ({ ...each, id: `own-${index}` })),
  }));

/** The default table, or one's own. */
export const anyRules: fc.Arbitrary<WeekRules> = fc.oneof(
  { arbitrary: fc.constant(defaultRules), weight: 2 },
  { arbitrary: ownRules, weight: 1 },
);
