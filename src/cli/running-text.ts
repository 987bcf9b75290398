import type { PlanRunning, PlanWeek } from '../plan.js';
import type { Method } from '../training/method/document.js';
import { categoryTitle } from '../words/category-name.js';
import { distancesOf } from '../words/running/distances.js';
import { energyText } from '../words/running/energy-text.js';
import { heartLines } from '../words/running/heart-text.js';
import { runLine } from '../words/running/run-line.js';
import { runningHeadline } from '../words/running/running-headline.js';
import { runningNoticeLine } from '../words/running/running-notice-line.js';
import { runningReasons } from '../words/running/running-reasons.js';
import { uptakeLine } from '../words/running/uptake-line.js';
import { dayName } from '../words/week/day-name.js';
import type { Words } from '../words/words.js';
import { listed, page, under } from './paragraphs.js';
import { reasonText } from './reason-text.js';
import { bandTable, equalTimesTable, guideTable } from './running-tables.js';
import type { Speech } from './speech.js';
import { conflictParagraphs } from './week-text.js';

interface Made {
  readonly week: PlanWeek | null;
  readonly running: PlanRunning;
}

/** The running of a week as a page of text: the answer, how each kind is run, every run, equal times, the heart, why. */
export function runningText(speech: Speech, method: Method, { week, running }: Made): string {
  const { words } = speech;
  const [reason, ...reasons] = runningReasons(words, method).map(reasonText);
  return page([
    runningHeadline(words, running),
    listed('', notices(words, running)),
    ...conflictParagraphs(words, method, week),
    under(words.say('running.guides'), guideTable(speech, method, running)),
    runsOfWeek(words, method, running),
    sums(speech, running),
    equalTimes(words, method, running),
    heartLines(words, method, running).join('\n'),
    bandTable(words, running),
    under(words.say('running.box.basis'), reason ?? ''),
    ...reasons,
    words.say('caution.short'),
  ]);
}

function notices(words: Words, running: PlanRunning): readonly string[] {
  const { race, thresholdPace } = running.wishes;
  return [
    ...running.notices.map((notice) => runningNoticeLine(words, running, notice)),
    ...(race && thresholdPace !== null ? [words.say('running.input.threshold.race')] : []),
  ];
}

function runsOfWeek(words: Words, method: Method, running: PlanRunning): string {
  const runs = running.sessions.filter(({ parts }) => parts.length > 0);
  if (runs.length === 0) return words.say('running.no-runs');
  return listed(
    words.say('running.runs'),
    runs.map((run) => `${runHead(words, method, { run, running })}\n${runLine(words, running, run)}`),
  );
}

/** What kind, how long, how far, and what it takes. */
function runHead(
  words: Words,
  method: Method,
  { run, running }: { readonly run: PlanRunning['sessions'][number]; readonly running: PlanRunning },
): string {
  const { category, minutes, day, metres, energy } = run;
  const head = words.say(day === null ? 'running.run' : 'running.run.on', {
    kind: categoryTitle(words, method, category),
    minutes: words.minutesShort(minutes),
    ...(day === null ? {} : { day: dayName(words, day) }),
  });
  const facts = [
    ...(metres ? [distancesOf(words, running.wishes.unit).span(metres)] : []),
    ...(energy ? [energyText(words, energy)] : []),
  ];
  return [head, ...facts].join(' · ');
}

function equalTimes(words: Words, method: Method, running: PlanRunning): string {
  const { basis } = running;
  return basis
    ? [words.say('running.box.equal'), uptakeLine(words, basis), equalTimesTable(words, method, running)].join('\n')
    : '';
}

/** How far all runs of the week go, and what all of its sessions take. */
function sums({ words, texts }: Speech, { metres, energy, wishes }: PlanRunning): string {
  const distance = metres && metres.to > 0 ? distancesOf(words, wishes.unit).span(metres) : null;
  return [
    ...(distance === null ? [] : [texts.say('running.distance-of-week', { distance })]),
    ...(energy ? [words.say('running.rest-of-week', { energy: energyText(words, energy) })] : []),
  ].join('\n');
}
