import { html, type TemplateResult } from 'lit';
import type { SeasonRequest } from '../../plan/season/wishes.js';
import { seasonLimits, upkeepIds } from '../../training/method/season-rules.js';
import { eventList } from './event-list.js';
import { phaseList } from './phase-list.js';
import { choiceField, shareField } from '../fields/choice-fields.js';
import { numberField } from '../fields/fields.js';
import type { SeasonView } from './season-view.js';

/** How the season is shaped: phases, rises, easier weeks, taper, strength, rest, further events. */
export function shapeBox(view: SeasonView): TemplateResult {
  return html`${phaseList(view)}
    <div class="season-fields">${rises(view)} ${easier(view)} ${taper(view)} ${strength(view)} ${breaks(view)}</div>
    ${eventList(view)}`;
}

/** Weeks to choose from, with 0 as "none". */
function weekChoices({ words }: SeasonView, least: number, most: number): { value: number; text: string }[] {
  return Array.from({ length: most - least + 1 }, (_, index) => {
    const count = least + index;
    return { value: count, text: count === 0 ? words.say('season.none') : words.say('season.weeks', { count }) };
  });
}

type Change = (change: SeasonRequest) => SeasonRequest;

const changing =
  ({ request }: SeasonView): Change =>
  (change) => ({ ...request, ...change });

function rises(view: SeasonView): TemplateResult {
  const { words, season } = view;
  const set = changing(view);
  return shareField(view, {
    id: 'season-rise',
    label: words.say('season.shape.rise'),
    value: season.wishes.rise,
    least: 0,
    most: 0.3,
    set: (rise) => set({ rise }),
  });
}

function easier(view: SeasonView): TemplateResult {
  const { words, season } = view;
  const set = changing(view);
  const every = Array.from({ length: seasonLimits.easierEvery - 1 }, (_, index) => index + 2);
  return html`${choiceField(view, {
    id: 'season-easier',
    label: words.say('season.shape.easier'),
    value: season.wishes.easierEvery,
    choices: [
      { value: 0, text: words.say('season.none') },
      ...every.map((value) => ({ value, text: words.say('season.shape.every', { count: value }) })),
    ],
    set: (easierEvery) => set({ easierEvery }),
  })}
  ${shareField(view, {
    id: 'season-easier-drop',
    label: words.say('season.shape.easier-drop'),
    value: season.wishes.easierDrop,
    least: 0,
    most: 0.6,
    set: (easierDrop) => set({ easierDrop }),
  })}`;
}

function taper(view: SeasonView): TemplateResult {
  const { words, season } = view;
  const set = changing(view);
  return html`${choiceField(view, {
    id: 'season-taper',
    label: words.say('season.shape.taper'),
    value: season.wishes.taperWeeks,
    choices: weekChoices(view, 0, seasonLimits.taperWeeks),
    set: (taperWeeks) => set({ taperWeeks }),
  })}
  ${shareField(view, {
    id: 'season-taper-drop',
    label: words.say('season.shape.taper-drop'),
    value: season.wishes.taperDrop,
    least: 0,
    most: 0.9,
    set: (taperDrop) => set({ taperDrop }),
  })}`;
}

function strength(view: SeasonView): TemplateResult {
  const { words, season } = view;
  const set = changing(view);
  const sessions = Array.from({ length: seasonLimits.upkeepSessions }, (_, index) => index + 1);
  return html`${choiceField(view, {
    id: 'season-upkeep',
    label: words.say('season.shape.upkeep'),
    value: season.wishes.upkeepFrom,
    choices: upkeepIds.map((value) => ({ value, text: words.say(`season.upkeep.${value}`) })),
    set: (upkeepFrom) => set({ upkeepFrom }),
  })}
  ${choiceField(view, {
    id: 'season-upkeep-sessions',
    label: words.say('season.shape.upkeep-sessions'),
    value: season.wishes.upkeepSessions,
    choices: sessions.map((value) => ({ value, text: words.number(value) })),
    set: (upkeepSessions) => set({ upkeepSessions }),
  })}`;
}

function breaks(view: SeasonView): TemplateResult {
  const { words, season } = view;
  const set = changing(view);
  return html`${choiceField(view, {
    id: 'season-recovery',
    label: words.say('season.shape.recovery'),
    value: season.wishes.recoveryWeeks,
    choices: weekChoices(view, 0, seasonLimits.recoveryWeeks),
    set: (recoveryWeeks) => set({ recoveryWeeks }),
  })}
  ${numberField(view, {
    id: 'season-off',
    label: words.say('season.shape.weeks-off'),
    value: season.wishes.weeksOff,
    range: { least: 0, most: 26, step: 1 },
    unit: words.say('season.unit.weeks', { count: season.wishes.weeksOff }),
    spoken: words.say('season.weeks', { count: season.wishes.weeksOff }),
    set: (weeksOff) => set({ weeksOff }),
  })}
  ${numberField(view, {
    id: 'season-longest',
    label: words.say('season.shape.longest-run'),
    value: season.wishes.longestRun ?? 0,
    range: { least: 0, most: 240, step: 5 },
    unit: words.say('unit.minutes'),
    spoken: season.wishes.longestRun === null ? words.say('season.unknown') : words.minutes(season.wishes.longestRun),
    // 0 stands for a run that nobody knows of.
    set: (minutes) => set({ longestRun: minutes === 0 ? null : minutes }),
  })}`;
}
