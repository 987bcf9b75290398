import { describe, expect, it } from 'vitest';
import { createPlanner, type Notice, type PlanRequest, type RuleOutcome } from '../../../src/plan.js';
import defaultMethod from '../../../shared/methods/default.json';
import { loadWords } from '../../../src/words/load-words.js';
import { noticeSentence } from '../../../src/words/notice-sentence.js';
import { noticeLines, ruleLines } from '../../../src/words/plan-lines.js';
import { noticesWithCauses } from '../../../src/words/notices-with-causes.js';
import { ruleSentence } from '../../../src/words/rule-sentence.js';
import { statusMessage, weekSentence } from '../../../src/words/week-sentence.js';
import { german, planned, planner } from './planned.js';

const words = await loadWords('en');

const { method } = planner;
const texts = (lines: readonly { text: string }[]): string[] => lines.map(({ text }) => text);

const cap: RuleOutcome = {
  id: 'strength-cap',
  kind: 'change',
  enabled: true,
  acted: true,
  on: 'strength_minutes',
  to: 'slow_minutes',
  before: 141,
  after: 120,
  status: 'common practice',
};

describe('ruleSentence(words, method, outcome)', () => {
  it.each<[string, RuleOutcome, string, string]>([
    [
      'acted',
      cap,
      'Strength is held at 120 minutes: 21 minutes moved to slow running.',
      'Krafttraining bleibt bei 120 Minuten: 21 Minuten mehr für langsames Laufen.',
    ],
    ['did not act', { ...cap, acted: false }, 'Strength cap: did not act.', 'Obergrenze Kraft: griff nicht ein.'],
    [
      'is off',
      { ...cap, enabled: false, acted: false },
      'Strength cap: switched off.',
      'Obergrenze Kraft: ausgeschaltet.',
    ],
    [
      'only keeps strength up',
      { ...cap, id: 'strength-upkeep', before: 108, after: 70 },
      'Strength is held at 70 minutes, enough to keep what is there: 38 minutes moved to slow running.',
      'Krafttraining bleibt bei 70 Minuten, genug, um sie zu erhalten: 38 Minuten mehr für langsames Laufen.',
    ],
    [
      'brought strength up',
      { ...cap, id: 'strength-too-small', before: 9, after: 15 },
      'Strength: 9 minutes would be too short for a session, so it is brought up to 15 minutes, with time from slow running.',
      'Krafttraining: 9 Minuten wären zu kurz für eine Einheit, daher 15 Minuten, auf Kosten von: langsames Laufen.',
    ],
    [
      'merged intervals',
      { ...cap, id: 'intervals-too-small', on: 'intervals_minutes', to: 'tempo_minutes', before: 18, after: 0 },
      'Intervals: 18 minutes would be too short for a session, so the time goes to tempo running.',
      'Intervalle: 18 Minuten wären zu kurz für eine Einheit, daher mehr Zeit für Tempolauf.',
    ],
  ])('of a rule that %s', (_, outcome, english, other) => {
    expect(ruleSentence(words, method, outcome)).toBe(english);
    expect(ruleSentence(german, method, outcome)).toBe(other);
  });

  it("fills a coach's own sentence in, with the coach's own names", async () => {
    const categories = defaultMethod.categories.map((category) =>
      category.id === 'slow' ? { ...category, name: 'Easy miles' } : category,
    );
    const rules = defaultMethod.rules.map((rule) =>
      rule.id === 'strength-cap' ? { ...rule, says: '{moved} of {on} become {to} ({before} → {after})' } : rule,
    );
    const own = await createPlanner({ ...defaultMethod, categories, rules });
    if (!own.ok) throw new Error(JSON.stringify(own.problems));
    const { plan } = planned({ hours: 8, phase: 'build', strengthCap: 100 }, own.value);
    expect(texts(ruleLines(words, own.value.method, plan))).toEqual([
      '44 minutes of strength become Easy miles (144 minutes → 100 minutes)',
    ]);
  });
});

describe('noticeSentence(words, method, notice)', () => {
  it.each<[string, Notice, string, string]>([
    [
      'a rounded total',
      { code: 'total-rounded', level: 'note', values: { exact: 246, rounded: 245 } },
      'The week is planned as 245 minutes instead of 246 minutes: sessions come in steps of 5 minutes.',
      'Die Woche wird mit 245 Minuten statt 246 Minuten geplant: Einheiten gehen in Schritten von 5 Minuten.',
    ],
    [
      'a session every second week',
      { code: 'every-second-week', level: 'note', category: 'intervals', values: { moved: 18, session: 35 } },
      'Intervals can also stay, as one session of 35 minutes every second week.',
      'Intervalle: auch möglich als eine Einheit von 35 Minuten jede zweite Woche.',
    ],
    [
      'a pick that no longer fits',
      { code: 'pick-dropped', level: 'note', category: 'strength', values: { minutes: 75 } },
      'Strength: the sessions picked no longer fit 75 minutes; the best fit is used instead.',
      'Krafttraining: die gewählten Einheiten passen nicht mehr zu 75 Minuten; stattdessen gilt die beste Aufteilung.',
    ],
    [
      'a quantity that failed',
      { code: 'quantity-failed', level: 'caution', quantity: 'running_share', values: {} },
      'Share of running: no value, because a formula of the method cannot be worked out here.',
      'Anteil Laufen: kein Wert, weil sich eine Formel der Methode hier nicht berechnen lässt.',
    ],
  ])('of %s', (_, notice, english, other) => {
    expect(noticeSentence(words, method, notice)).toBe(english);
    expect(noticeSentence(german, method, notice)).toBe(other);
  });
});

describe('ruleLines and noticeLines(words, method, plan)', () => {
  it('say what was corrected and what to do about the rest, with its standing', () => {
    const { plan } = planned({ hours: 8, phase: 'build', event: 'longer' });
    expect(ruleLines(words, method, plan)).toEqual([
      {
        id: 'strength-cap',
        text: 'Strength is held at 120 minutes: 24 minutes moved to slow running.',
        level: 'note',
        status: 'common practice, no published source',
      },
    ]);
    expect(noticeLines(words, method, plan).map(({ id, level, status }) => [id, level, status])).toEqual([
      ['rule many-hours', 'note', 'common practice, no published source'],
      ['rule long-event', 'note', 'common practice, no published source'],
    ]);
  });

  it.each<PlanRequest>([{ hours: 1 }, { hours: 2, event: 'none' }, { hours: 0.5, phase: 'taper', event: '5k' }])(
    'leave no placeholder unfilled and no key untold: %j',
    (request) => {
      const { plan } = planned(request);
      for (const each of [words, german]) {
        const said = [...texts(ruleLines(each, method, plan)), ...texts(noticeLines(each, method, plan))];
        expect(said.length).toBeGreaterThan(1);
        expect(said.filter((text) => /[{}]|^\w+\.\w/.test(text))).toEqual([]);
      }
    },
  );

  it('tell why a quantity has no value', async () => {
    const quantities = [{ id: 'per_event', name: 'Pace share', formula: '1 / target_event', status: 'assumption' }];
    const own = await createPlanner({ ...defaultMethod, quantities });
    if (!own.ok) throw new Error(JSON.stringify(own.problems));
    const { plan } = planned({ hours: 4, phase: 'build', event: 'none' }, own.value);
    expect(texts(noticesWithCauses(words, own.value.method, plan))).toContain(
      'Pace share: no value, because a formula of the method cannot be worked out here. The formula divides by zero.',
    );
  });
});

describe('weekSentence and statusMessage(words, method, plan)', () => {
  it('tell the week to those who hear it', () => {
    const { plan } = planned({ hours: 2, phase: 'recovery' });
    expect(weekSentence(words, method, plan)).toBe(
      'Two hours in recovery: 50 minutes of slow running, 40 minutes of cross-training, and 30 minutes of strength.',
    );
    expect(statusMessage(words, method, plan)).toBe(`${weekSentence(words, method, plan)} 1 thing worth knowing.`);
    expect(statusMessage(german, method, plan)).toMatch(/ 1 Hinweis\.$/);
  });

  it('count rules and notices', () => {
    const { plan } = planned({ hours: 1, phase: 'build' });
    expect(statusMessage(words, method, plan)).toMatch(/ 3 rules acted\. 4 things worth knowing\.$/);
  });
});
