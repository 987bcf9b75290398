import { html, nothing, type TemplateResult } from 'lit';
import type { Problem } from '../problem.js';
import { problemSentence } from '../words/problem-sentence.js';
import type { Words } from '../words/words.js';

/** Most problems shown at once; more are counted. */
const shown = 8;

/** The labels of the inputs, by the paths that problems with them have. */
const labels: Readonly<Record<string, string>> = {
  hours: 'input.hours',
  phase: 'input.phase',
  level: 'input.level',
  event: 'input.event',
  strengthCap: 'input.strength-cap',
  'season.date': 'season.input.date',
  'season.start': 'season.input.start',
  'season.weeks': 'season.input.weeks',
  'season.hours': 'season.input.hours',
  'season.mostHours': 'season.input.most',
  'season.weeksOff': 'season.shape.weeks-off',
  'season.longestRun': 'season.shape.longest-run',
  'running.race.metres': 'running.input.kilometres',
  'running.race.seconds': 'running.input.time',
  'running.race.date': 'running.input.date',
  'running.thresholdPace': 'running.input.threshold',
  'running.age': 'running.input.age',
  'running.highestHeart': 'running.input.highest',
  'running.restingHeart': 'running.input.resting',
  'running.weight': 'running.input.weight',
  'strength.minutes': 'strength.minutes',
  'strength.age': 'strength.age',
  'checks.age': 'checks.input.age',
  'checks.hoursBefore': 'checks.input.hours',
  'checks.longestRun': 'checks.input.run',
};

/** A problem as a sentence that calls an input what the screen calls it. */
export function sayProblem(words: Words, problem: Problem): string {
  const label = Object.hasOwn(labels, problem.path) ? labels[problem.path] : undefined;
  return problemSentence(words, label === undefined ? problem : { ...problem, path: words.say(label) });
}

/** A box that says what is wrong with the attributes or the method; nothing where nothing is. */
export function problemBox(
  words: Words,
  heading: 'faulty-inputs' | 'faulty-method',
  problems: readonly Problem[],
): TemplateResult | typeof nothing {
  if (problems.length === 0) return nothing;
  const causes = oncePerCause(problems);
  const more = causes.length - shown;
  return html`<section class="problems" part="problems" role="alert">
    <h3>${words.say(`problem.${heading}`)}</h3>
    <ul>
      ${causes.slice(0, shown).map((problem) => html`<li>${sayProblem(words, problem)}</li>`)}
      ${more > 0 ? html`<li>${words.say('problem.more', { count: more })}</li>` : nothing}
    </ul>
    ${heading === 'faulty-method' ? html`<p>${words.say('problem.last-method')}</p>` : nothing}
  </section>`;
}

/** Problems that have one cause are told once, however many quantities it touches. */
export function oncePerCause(problems: readonly Problem[]): readonly Problem[] {
  const causes = problems.map(({ path, allowed }) => JSON.stringify(allowed['cause'] ?? path));
  return problems.filter((_, index) => causes.indexOf(causes[index] ?? '') === index);
}
