import { builtInPlanner } from '../../../../src/plan.js';
import { describe, expect, test } from 'vitest';
import { planWeek, type PlanRequest } from '../../../../src/plan.js';
import { answerIds, screen, type AnswerId } from '../../../../src/training/checks/screening.js';
import { defaultDocument, documentWith, plannerOf, problemsOf } from '../../training/method/documents.js';

const stopping: readonly AnswerId[][] = [['symptoms'], ['bone-pain'], ['known-disease', 'not-active']];
const asked = (answers: readonly AnswerId[]): PlanRequest => ({ hours: 4, checks: { answers } });

describe('answers that stop', () => {
  test.each(stopping)('%s: there is no plan, and the reason is told', (...answers) => {
    const advice = answers.length > 1 ? 'ask-first' : 'stop';
    expect(planWeek(asked(answers))).toEqual({
      ok: false,
      problems: [
        {
          ...{ path: 'checks.answers', value: answers, code: 'no-plan' },
          allowed: { advice, text: { key: `advice.${advice}` } },
        },
      ],
    });
  });

  test('stop whatever else is said and asked for', () => {
    const rest = answerIds.filter((id) => id !== 'symptoms');
    const request = {
      ...{ hours: 4, week: { days: [60, 60, 60, 60, 60, 60, 60] }, running: {}, strength: {} },
      season: { weeks: 8, start: '2026-01-05' },
    };
    for (const answers of [
      ['symptoms', ...rest],
      ['bone-pain', ...rest],
    ] satisfies AnswerId[][])
      expect(planWeek({ ...request, checks: { answers, age: 40 } }).ok).toBe(false);
    expect(planWeek({ ...request, checks: { answers: [], age: 40 } }).ok).toBe(true);
  });

  test('stop in a request that has other faults as well, which are told too', () => {
    const outcome = planWeek({ hours: 4000, checks: { answers: ['symptoms'] } });
    const codes = outcome.ok ? [] : outcome.problems.map(({ code }) => code);
    expect(codes).toEqual(['out-of-range', 'no-plan']);
  });

  test('every set of answers has a plan exactly where the screening does not stop', () => {
    for (let bits = 0; bits < 2 ** answerIds.length; bits += 1) {
      const answers = answerIds.filter((_, place) => Math.floor(bits / 2 ** place) % 2 === 1);
      expect([answers, planWeek(asked(answers)).ok]).toEqual([answers, !screen(answers).stops]);
    }
  });
});

describe('a clinic’s method', () => {
  const wording = (advice: Readonly<Record<string, unknown>>) => documentWith('checks.screening.advice', advice);

  test('stops in its own words', async () => {
    const planner = await plannerOf(wording({ stop: 'Call our desk today.', 'ask-first': 'See our doctor first.' }));
    const said = (answers: readonly AnswerId[]) => {
      const outcome = planner.plan(asked(answers));
      return outcome.ok ? 'a plan' : outcome.problems.map(({ code, allowed }) => [code, allowed['text']]);
    };
    expect(stopping.map(said)).toEqual([
      ...[[['no-plan', 'Call our desk today.']], [['no-plan', 'Call our desk today.']]],
      [['no-plan', 'See our doctor first.']],
    ]);
    expect(said(['known-disease'])).toBe('a plan');
  });

  test('stops in the usual words where it has none of its own', async () => {
    const planner = await plannerOf(wording({ go: 'Good luck.' }));
    expect(planner.plan(asked(['symptoms']))).toMatchObject({
      ok: false,
      problems: [{ code: 'no-plan', allowed: { text: { key: 'advice.stop' } } }],
    });
  });

  test('stops without a section on checks, and with all its checks switched off', async () => {
    const without = await plannerOf(documentWith('checks', undefined));
    const none = await plannerOf(documentWith('checks.list', []));
    const off = await plannerOf(documentWith('checks.list[0].enabled', false));
    for (const planner of [without, none, off])
      for (const answers of stopping) expect(planner.plan(asked(answers)).ok).toBe(false);
  });

  test.each(['', ' ', '\n\t ', '.', '\u00a0', '\u200b\u200b\u200b', '\u2060\u2060', { key: '' }, { key: 'advice.' }])(
    'cannot leave the stop unsaid: %j is refused',
    async (blank) => {
      const problems = await problemsOf(wording({ stop: blank }));
      expect(problems.map(({ path }) => path.startsWith('checks.screening.advice.stop'))).not.toContain(false);
      expect(problems.length).toBeGreaterThan(0);
    },
  );

  test.each([null, 0, false, [], {}, { key: 'problem.missing' }, { key: 'advice.stop', also: 1 }, 'a'.repeat(1001)])(
    'cannot say %j instead',
    async (value) => {
      expect((await problemsOf(wording({ stop: value }))).length).toBeGreaterThan(0);
    },
  );

  test('cannot have an advice for a stop that says to go', async () => {
    for (const key of ['advice.go', 'advice.start-easy', 'advice.nothing-of-the-kind'])
      expect((await problemsOf(wording({ stop: { key } }))).length).toBeGreaterThan(0);
  });

  test.each(['enabled', 'stops', 'answers', 'logic', 'questions', '__proto__'])(
    'has no field %s to switch the stop off with',
    async (field) => {
      const problems = await problemsOf(documentWith(`checks.screening.${field}`, false));
      expect(problems).toMatchObject([{ path: `checks.screening.${field}`, code: 'unknown-field' }]);
    },
  );

  test('cannot have an advice of another name', async () => {
    expect(await problemsOf(wording({ 'just-run': 'Go on.' }))).toMatchObject([
      { path: 'checks.screening.advice.just-run', code: 'unknown-field' },
    ]);
  });

  test('is the same method as the built-in one otherwise', async () => {
    const [one, other] = [await plannerOf(defaultDocument()), await plannerOf(wording({ stop: 'Call our desk.' }))];
    expect(other.plan(asked([]))).toEqual(one.plan(asked([])));
  });
});

describe('answers', () => {
  const going = answerIds.filter((id) => id !== 'symptoms' && id !== 'bone-pain' && id !== 'not-active');

  test('leave no trace in the plan', () => {
    const days = [60, 60, 60, 60, 60, 60, 60];
    const text = (answers: readonly AnswerId[]): string => {
      const outcome = planWeek({ hours: 4, week: { days }, strength: {}, checks: { age: 40, answers } });
      if (!outcome.ok) throw new Error(JSON.stringify(outcome.problems));
      return JSON.stringify(outcome.value);
    };
    const bare = text([]);
    for (const answers of [going, ...answerIds.filter((id) => !screen([id]).stops).map((id) => [id])])
      expect(text(answers)).toBe(bare);
    for (const id of going) expect(bare).not.toContain(`"${id}"`);
    expect(bare).not.toContain('answers');
  });

  test('is said first where something else that was told is wrong', () => {
    for (const given of [
      { age: 4, answers: ['symptoms'] },
      { answers: ['x', 'symptoms'] },
      { hours: 1, answers: ['bone-pain'] },
    ]) {
      const outcome = builtInPlanner().plan({ hours: 4, checks: given });
      const codes = outcome.ok ? [] : outcome.problems.map(({ code }) => code);
      expect([codes[0], codes.length]).toEqual(['no-plan', 2]);
    }
  });
});
