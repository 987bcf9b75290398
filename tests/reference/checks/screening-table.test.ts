import { describe, expect, test } from 'vitest';
import { answerIds, screen, type AnswerId } from '../../../src/training/checks/screening.js';
import { rowsOf } from '../tables.js';

/*
 * The cells of the published screening, written out from E01 (Riebe et al. 2015) and E02 (ACSM's Guidelines, 10th ed.,
 * chapter 2); bone pain from E05 (Warden et al. 2014). A dash is no, a star is either.
 *
 * E02: "not active + known disease = clearance first; active + known disease, no symptoms = clearance before vigorous; any
 * symptoms = stop and seek clearance". Without a disease nobody is sent anywhere: light to moderate at first where not
 * active. That easy training may go on with a disease, and that a plan of runs is more than easy, is told as one advice.
 */
const cells = rowsOf(`
  symptoms | bone-pain | known-disease | not-active | easy-only | advice          | a plan
  yes      | *         | *             | *          | *         | stop            | no
  -        | yes       | *             | *          | *         | stop            | no
  -        | -         | yes           | yes        | *         | ask-first       | no
  -        | -         | yes           | -          | -         | ask-before-hard | yes
  -        | -         | yes           | -          | yes       | stay-easy       | yes
  -        | -         | -             | yes        | *         | start-easy      | yes
  -        | -         | -             | -          | *         | go              | yes
`);
const [head = [], ...rows] = cells;

/** Every set of answers there is. */
const sets: readonly (readonly AnswerId[])[] = Array.from({ length: 2 ** answerIds.length }, (_, bits) =>
  answerIds.filter((__, place) => Math.floor(bits / 2 ** place) % 2 === 1),
);

const fits = (row: readonly string[], answers: readonly string[]): boolean =>
  row.slice(0, 5).every((cell, column) => cell === '*' || (cell === 'yes') === answers.includes(head[column] ?? ''));

describe('every set of answers', () => {
  test('fits one row of the table', () => {
    expect(head.slice(0, 5)).toEqual(answerIds.slice(0, 5));
    expect(sets).toHaveLength(512);
    expect(sets.filter((answers) => rows.filter((row) => fits(row, answers)).length !== 1)).toEqual([]);
  });

  test.each(rows.map((row) => [row.slice(0, 5).join(' | '), row] as const))('%s', (_, row) => {
    const fitting = sets.filter((answers) => fits(row, answers));
    expect(fitting.length).toBeGreaterThan(0);
    for (const answers of fitting) {
      const { advice, stops } = screen(answers);
      expect([answers, advice, stops ? 'no' : 'yes']).toEqual([answers, ...row.slice(5)]);
    }
  });

  test('names only answers that were given, and always one where it stops', () => {
    for (const answers of sets) {
      const { because, stops } = screen(answers);
      expect(because.filter((id) => !answers.includes(id))).toEqual([]);
      if (stops) expect(because.length).toBeGreaterThan(0);
    }
  });

  test('gives the same in every order, and twice said', () => {
    for (const answers of sets) {
      expect(screen([...answers].reverse())).toEqual(screen(answers));
      expect(screen([...answers, ...answers])).toEqual(screen(answers));
    }
  });

  test('has the caution of each of the other answers, whatever it leads to', () => {
    const others = ['pain', 'pregnant', 'recent-birth', 'low-energy'];
    for (const answers of sets)
      expect(screen(answers).cautions).toEqual(others.filter((id) => answers.some((each) => each === id)));
  });
});

describe('what led to the advice', () => {
  test.each([
    [['symptoms'], ['symptoms']],
    [['bone-pain'], ['bone-pain']],
    [
      ['symptoms', 'bone-pain', 'known-disease'],
      ['symptoms', 'bone-pain'],
    ],
    [
      ['known-disease', 'not-active', 'easy-only'],
      ['known-disease', 'not-active'],
    ],
    [['known-disease'], ['known-disease']],
    [['not-active', 'pain'], ['not-active']],
    [['pain'], []],
  ] satisfies readonly (readonly [AnswerId[], AnswerId[]])[])('of %j is %j', (answers, because) => {
    expect(screen(answers).because).toEqual(because);
  });
});
