import { describe, expect, it } from 'vitest';
import defaultMethod from '../../../../shared/methods/default.json';
import { createPlanner } from '../../../../src/plan.js';
import type { Clash } from '../../../../src/training/week/clashes.js';
import { loadWords } from '../../../../src/words/load-words.js';
import { clashLine } from '../../../../src/words/week/clash-line.js';
import { german, planned, planner } from '../planned.js';

const words = await loadWords('en');
const { method } = planner;

const onDays = (kind: string, cost: number, days: readonly number[]): Clash => ({
  kind,
  days,
  cost,
  category: null,
  by: 0,
});
const ofKind = (kind: string, category: Clash['category'], by: number): Clash => ({
  kind,
  days: [],
  cost: 2,
  category,
  by,
});

const cases: readonly [Clash, string, string][] = [
  [
    onDays('quality-neighbours', 8, [1, 2]),
    'Quality runs on neighbouring days: Tuesday and Wednesday.',
    'Schnelle Läufe an Nachbartagen: Dienstag und Mittwoch.',
  ],
  [
    onDays('strength-neighbours', 6, [6, 0]),
    'Strength on neighbouring days: Sunday and Monday.',
    'Kraft an Nachbartagen: Sonntag und Montag.',
  ],
  [
    onDays('strength-before-quality', 4, [3, 4]),
    'Strength on the day before a quality run: Thursday and Friday.',
    'Kraft am Tag vor einem schnellen Lauf: Donnerstag und Freitag.',
  ],
  [
    onDays('long-after-quality', 3, [5, 6]),
    'The long run on the day after a quality run: Saturday and Sunday.',
    'Der lange Lauf am Tag nach einem schnellen: Samstag und Sonntag.',
  ],
  [
    onDays('strength-with-quality', 2, [1]),
    'Strength on the same day as a quality run: Tuesday.',
    'Kraft am selben Tag wie ein schneller Lauf: Dienstag.',
  ],
  [onDays('two-sessions', 1, [2]), 'More than one session on Wednesday.', 'Mehr als eine Einheit am Mittwoch.'],
  [
    ofKind('missed-minutes', 'slow', -10),
    'Slow running: 10 minutes less than planned.',
    'Langsames Laufen: 10 Minuten weniger als geplant.',
  ],
  [
    ofKind('missed-minutes', 'cross', 5),
    'Cross-training: 5 minutes more than planned.',
    'Ausgleichs\u00ADtraining: 5 Minuten mehr als geplant.',
  ],
  [
    ofKind('missed-minutes', 'tempo', 1),
    'Tempo running: 1 minute more than planned.',
    'Tempolauf: 1 Minute mehr als geplant.',
  ],
  [
    ofKind('session-count', 'strength', -1),
    'Strength: one session fewer than usual for its minutes.',
    'Krafttraining: eine Einheit weniger als bei diesen Minuten üblich.',
  ],
  [
    ofKind('session-count', 'slow', 2),
    'Slow running: two sessions more than usual for its minutes.',
    'Langsames Laufen: zwei Einheiten mehr als bei diesen Minuten üblich.',
  ],
];

describe('clashLine(words, method, clash)', () => {
  it.each(cases)('%j', (clash, english, other) => {
    expect(clashLine(words, method, clash).text).toBe(english);
    expect(clashLine(german, method, clash).text).toBe(other);
  });

  it('has a case above for every clash of the built-in method', () => {
    const covered = new Set(cases.map(([{ kind }]) => kind));
    expect(defaultMethod.week.clashes.filter(({ id }) => !covered.has(id))).toEqual([]);
  });

  it('brings its name, its reason and how well that is founded', () => {
    const line = clashLine(words, method, onDays('strength-neighbours', 6, [0, 1]));
    expect(line.name).toBe('Strength on neighbouring days');
    expect(line.status).toBe('assumption, adjustable');
    expect(line.sources).toEqual(['A22']);
    expect(line.reason).toMatch(/a planner’s margin, not a published figure/);
  });

  it('says of every default cost that it is an assumption', () => {
    for (const { id } of defaultMethod.week.clashes) {
      expect(clashLine(words, method, onDays(id, 1, [])).reason).toMatch(/assumption\.$/);
      expect(clashLine(german, method, onDays(id, 1, [])).reason).toMatch(/Annahme\.$/);
    }
  });

  it("fills a coach's own sentence in", async () => {
    const says = '{cost} points: {then} after {first} ({days})';
    const clashes = defaultMethod.week.clashes.map((each) =>
      each.id === 'long-after-quality' ? { ...each, name: 'tired legs', says, reason: 'Club rule.', cost: 5 } : each,
    );
    const own = await createPlanner({ ...defaultMethod, week: { ...defaultMethod.week, clashes } });
    if (!own.ok) throw new Error(JSON.stringify(own.problems));
    const line = clashLine(words, own.value.method, onDays('long-after-quality', 5, [2, 3]));
    expect(line).toMatchObject({
      text: '5 points: the long run after tempo running or intervals (Wednesday and Thursday)',
      name: 'Tired legs',
      reason: 'Club rule.',
    });
  });

  it('shows a clash that the method does not know by its id', () => {
    expect(clashLine(words, method, onDays('gone', 1, [0]))).toEqual({
      text: 'gone',
      name: 'gone',
      reason: null,
      status: null,
      sources: [],
    });
  });

  it('leaves no gap in the clashes of a crowded week', () => {
    const { plan } = planned({ hours: 6, week: { days: [0, 0, 0, 120, 120, 0, 150], sessionsADay: 5, restDays: 0 } });
    const clashes = plan.week?.clashes ?? [];
    expect(clashes.length).toBeGreaterThan(3);
    for (const each of [words, german])
      expect(clashes.map((clash) => clashLine(each, method, clash).text).join()).not.toMatch(/[{}]|clash-says|week\./);
  });
});
