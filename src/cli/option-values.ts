import { checksLimits } from '../plan/checks/wishes.js';
import { handoutLimits } from '../plan/file/document.js';
import { runningLimits } from '../plan/running/wishes.js';
import { scenarioLimits } from '../plan/scenarios/document.js';
import { byHandReasons } from '../plan/season/wishes.js';
import { strengthGround } from '../plan/strength/strength-ground.js';
import { strengthLimits } from '../plan/strength/wishes.js';
import { answerIds } from '../training/checks/screening.js';
import type { Method } from '../training/method/document.js';
import { categoryIds, eventIds } from '../training/method/ids.js';
import { seasonPhaseIds, upkeepIds } from '../training/method/season-rules.js';
import { equipmentIds } from '../training/method/strength-rules.js';
import type { Values } from '../words/phrases.js';
import { clockTime } from '../words/running/clock-time.js';
import { usualEarly } from './calendar-options.js';
import type { OptionName } from './options.js';
import { spokenLanguages, type Speech } from './speech.js';

/** What the help fills into the texts of options: ranges, choices and starting values, those of the method first. */
export function optionValues({ words }: Speech, method: Method): Readonly<Partial<Record<OptionName, Values>>> {
  const { weekly_hours: hours, strength_cap: cap } = method.inputs;
  const { rules } = strengthGround(method);
  const { thresholdPace, highestHeart, restingHeart, weight, age } = runningLimits;
  return {
    hours: { least: hours.least, most: hours.most, start: hours.start },
    'strength-cap': { least: cap.least, most: cap.most, start: cap.start },
    lang: { choices: words.alternatives(spokenLanguages) },
    'upkeep-from': { choices: upkeepIds.join(', ') },
    phases: { choices: seasonPhaseIds.join(', ') },
    events: { choices: eventIds.join(', ') },
    'by-hand': { choices: byHandReasons.join(', ') },
    'threshold-pace': { least: clockTime(thresholdPace.least), most: clockTime(thresholdPace.most) },
    age,
    'highest-heart': highestHeart,
    'resting-heart': restingHeart,
    weight,
    equipment: { choices: equipmentIds.join(', '), start: rules.equipment.join(',') || 'none' },
    minutes: strengthLimits.minutes,
    'hours-before': checksLimits.hoursBefore,
    loads: { ...checksLimits.load, weeks: checksLimits.weeks },
    effort: { ...checksLimits.effort, choices: categoryIds.join(', ') },
    answers: { choices: answerIds.join(', ') },
    name: { most: scenarioLimits.name },
    contact: { most: handoutLimits.contact },
    early: { start: usualEarly },
    lifted: { ...strengthLimits.kilograms, repetitions: rules.maximum.most_repetitions },
  };
}
