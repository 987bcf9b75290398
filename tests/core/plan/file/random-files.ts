import fc from 'fast-check';
import type { HandoutTexts, PlanFile, ToldForChecks } from '../../../../src/plan/file/document.js';
import { checksLimits } from '../../../../src/plan/checks/wishes.js';
import type { RunningRequest } from '../../../../src/plan/running/wishes.js';
import { scenarioLimits } from '../../../../src/plan/scenarios/document.js';
import { strengthGround } from '../../../../src/plan/strength/strength-ground.js';
import { strengthLimits, type StrengthRequest } from '../../../../src/plan/strength/wishes.js';
import type { Method } from '../../../../src/training/method/document.js';
import { categoryIds } from '../../../../src/training/method/ids.js';
import { equipmentIds, patternIds } from '../../../../src/training/method/strength-rules.js';
import { recordLimits, type DoneSession } from '../../../../src/training/record/done-session.js';
import { runningRequests } from '../../../reference/running/random-runners.js';
import { civilText } from '../../../reference/season/civil-days.js';
import { anySheets } from '../../exchange/random-sheets.js';

/** Plain objects, as JSON.parse makes them. */
const plain = { noNullPrototype: true } as const;

interface Limits {
  readonly least: number;
  readonly most: number;
}

const wholes = ({ least, most }: Limits): fc.Arbitrary<number> => fc.integer({ min: least, max: most });
const between = ({ least, most }: Limits): fc.Arbitrary<number> =>
  fc.oneof(
    wholes({ least: Math.ceil(least), most: Math.floor(most) }),
    fc.double({ min: least, max: most, noNaN: true }),
  );
const orNull = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | null> => fc.option(value, { nil: null });

/** What says nothing is in no file. */
const toldOrNull = <T extends object>(request: fc.Arbitrary<T>): fc.Arbitrary<T | null> =>
  orNull(request.filter((fields) => Object.keys(fields).length > 0));
const some: { noNullPrototype: true; requiredKeys: [] } = { noNullPrototype: true, requiredKeys: [] };

/** Texts of any characters, halves of such as take two places among them. */
const texts = (most: number): fc.Arbitrary<string> =>
  fc.oneof(
    fc.constant(''),
    fc.string({ maxLength: most }),
    fc.string({ unit: 'binary', maxLength: Math.floor(most / 2) }),
    fc.array(fc.nat(0xffff), { maxLength: most }).map((units) => String.fromCharCode(...units)),
    fc.constantFrom('__proto__', 'é'.repeat(most), '🏃'.repeat(most / 2), ' \t\r\n\u2028\u0000 ', '"\\"', '</script>'),
  );

/** Nothing that is undefined, and races of days that are known too. */
const running: fc.Arbitrary<RunningRequest> = fc
  .tuple(runningRequests, fc.option(fc.constantFrom('2027-04-11', '2024-02-29', '1900-01-01'), { nil: undefined }))
  .map(([{ race, ...request }, date]) => {
    const run = race && date !== undefined ? { ...race, date } : race;
    return Object.fromEntries(Object.entries({ race: run, ...request }).filter(([, value]) => value !== undefined));
  });

function strengthOf(method: Method): fc.Arbitrary<StrengthRequest> {
  const { movements, rules } = strengthGround(method);
  const loaded = movements.filter((each) => each.loaded).map(({ id }) => id);
  const set = {
    movement: fc.constantFrom(...loaded),
    kilograms: between(strengthLimits.kilograms),
    repetitions: wholes({ least: 1, most: rules.maximum.most_repetitions }),
  };
  const formOf = (pattern: (typeof patternIds)[number]): fc.Arbitrary<string> =>
    fc.constantFrom(...movements.filter((each) => each.pattern === pattern).map(({ id }) => id));
  return fc.record(
    {
      equipment: fc.shuffledSubarray([...equipmentIds]),
      minutes: orNull(wholes(strengthLimits.minutes)),
      forms: fc
        .subarray([...patternIds])
        .chain((ids) => fc.record(Object.fromEntries(ids.map((id) => [id, formOf(id)])), plain)),
      lifted: fc.uniqueArray(fc.record(set, plain), { maxLength: 4, selector: ({ movement }) => movement }),
      age: orNull(wholes(strengthLimits.age)),
    },
    some,
  );
}

const loads = between(checksLimits.load);
const checks: fc.Arbitrary<ToldForChecks> = fc.record(
  {
    age: orNull(wholes(checksLimits.age)),
    hoursBefore: orNull(between(checksLimits.hoursBefore)),
    longestRun: orNull(between(checksLimits.longestRun)),
    weeks: fc.array(
      fc.oneof(fc.array(loads, { minLength: 7, maxLength: 7 }), fc.array(loads, { minLength: 1, maxLength: 1 })),
      { maxLength: checksLimits.weeks },
    ),
    efforts: fc
      .subarray([...categoryIds])
      .chain((ids) => fc.record(Object.fromEntries(ids.map((id) => [id, between(checksLimits.effort)])), plain)),
  },
  some,
);

/** Sessions that were done, in any order. */
export const anyDone: fc.Arbitrary<DoneSession> = fc.record(
  {
    date: fc.integer({ min: -25_567, max: 84_005 }).map(civilText),
    category: fc.constantFrom(...categoryIds),
    minutes: wholes(recordLimits.minutes),
    effort: orNull(between(recordLimits.effort)),
  },
  plain,
);
const records = fc
  .array(anyDone, { maxLength: 8 })
  .map((sessions) => sessions.sort((one, other) => Number(one.date > other.date) - Number(one.date < other.date)));

const handouts: fc.Arbitrary<HandoutTexts> = fc.record(
  { runner: texts(60), contact: texts(200), note: texts(1000) },
  plain,
);

/** Everything that people could have set, by either method. */
export const anyFiles: fc.Arbitrary<PlanFile> = anySheets.chain((sheet) =>
  fc.record(
    {
      name: texts(scenarioLimits.name),
      sheet: fc.constant(sheet),
      onShow: fc.constantFrom(...sheet.scenarios.map(({ id }) => id)),
      running: toldOrNull(running),
      strength: toldOrNull(strengthOf(sheet.method)),
      checks: toldOrNull(checks),
      record: records,
      handout: handouts,
    },
    plain,
  ),
);
