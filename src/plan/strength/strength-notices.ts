import type { PhaseId } from '../../training/method/ids.js';
import type { PatternId } from '../../training/method/strength-rules.js';
import { formOf } from '../../training/strength/candidates.js';
import { isAtHand } from '../../training/strength/choose-movement.js';
import { ages } from '../ages.js';
import type { StrengthNotice, StrengthNoticeCode, StrengthSession } from './document.js';
import type { SessionGround } from './strength-session.js';

/** What notices are made from. */
export interface NoticeGround {
  readonly sessions: readonly StrengthSession[];
  /** Every pattern that a session would have. */
  readonly patterns: readonly PatternId[];
  readonly ground: SessionGround;
  readonly phase: PhaseId;
}

/** What there is to say of a week's strength: of the person and the week first, then session by session. */
export function strengthNotices(ground: NoticeGround): readonly StrengthNotice[] {
  return [
    ...ofAge(ground),
    ...ofCount(ground),
    ...ofDays(ground),
    ...ofForms(ground),
    ...ofPatterns(ground),
    ...ofWeights(ground),
    ...ofLightLifts(ground),
    ...ground.sessions.flatMap((session, index) => ofSession(session, index, ground)),
  ];
}

type Details = Partial<Pick<StrengthNotice, 'session' | 'movement' | 'pattern' | 'values' | 'level'>>;

const notice = (code: StrengthNoticeCode, { level = 'note', values = {}, ...about }: Details = {}): StrengthNotice => ({
  code,
  level,
  ...about,
  values,
});

/** Guidance for the young asks for supervision; that for 65 and over for two sessions, and balance on three days. */
function ofAge({ sessions, ground: { wishes } }: NoticeGround): StrengthNotice[] {
  const { age } = wishes;
  if (age === null) return [];
  if (age < ages.adult) return [notice('under-18', { level: 'caution', values: { age } })];
  return age >= ages.older ? [notice('from-65', { values: { age, sessions: sessions.length } })] : [];
}

/** Trials had two to three sessions a week; in a taper one holds what is there. */
function ofCount({ sessions, ground: { rules }, phase }: NoticeGround): StrengthNotice[] {
  const { usual, most } = rules.dose.sessions;
  const count = sessions.length;
  if (count === 1 && usual > 1 && phase !== 'taper') return [notice('one-session', { values: { usual, most } })];
  return count > most ? [notice('many-sessions', { values: { count, most } })] : [];
}

function ofDays({ sessions }: NoticeGround): StrengthNotice[] {
  return sessions.some(({ day }) => day === null) ? [notice('no-days')] : [];
}

/** Forms that are wished for, and cannot be for want of equipment. */
function ofForms({ ground: { movements, equipment, forms } }: NoticeGround): StrengthNotice[] {
  return movements
    .filter((movement) => forms[movement.pattern] === movement.id && !isAtHand(movement, equipment))
    .map(({ id, pattern }) => notice('form-out-of-reach', { movement: id, pattern }));
}

function ofPatterns({ patterns, ground }: NoticeGround): StrengthNotice[] {
  const { stage, rules } = ground;
  const isWanted = (pattern: PatternId): boolean =>
    rules.patterns.some(({ id, role }) => id === pattern && stage.doses[role] !== null);
  return patterns
    .filter((pattern) => isWanted(pattern) && formOf(pattern, ground) === null)
    .map((pattern) => notice('no-movement', { pattern }));
}

/** Weights that a set of the movement would tell. */
function ofWeights({ sessions }: NoticeGround): StrengthNotice[] {
  const exercises = sessions.flatMap(({ blocks }) => blocks.flatMap((block) => block.exercises));
  const untold = exercises.filter(({ share, kilograms }) => share !== null && kilograms === null);
  const count = new Set(untold.map(({ movement }) => movement)).size;
  return count > 0 ? [notice('no-weights', { values: { count } })] : [];
}

/** Main lifts that a stage wants heavy, and that no weight makes so. */
function ofLightLifts({ sessions, ground: { stage } }: NoticeGround): StrengthNotice[] {
  const { main } = stage.doses;
  const exercises = sessions.flatMap(({ blocks }) => blocks.flatMap((block) => block.exercises));
  const isLight = exercises.some(
    ({ role, repetitions }) => role === 'main' && main && repetitions !== null && repetitions > main.repetitions,
  );
  return isLight && main?.unweighted ? [notice('not-heavy', { values: { repetitions: main.unweighted } })] : [];
}

function ofSession(
  { blocks, minutes, legs, landings }: StrengthSession,
  session: number,
  { ground: { rules } }: NoticeGround,
): StrengthNotice[] {
  const { main, landings: most } = rules.dose;
  const spared = legs === 'spared' ? [notice('legs-spared', { session })] : [];
  if (blocks.length === 0) return [...spared, notice('nothing-fits', { session, values: { minutes } })];
  const count = blocks.flatMap(({ exercises }) => exercises).filter(({ role }) => role === 'main').length;
  return [
    ...spared,
    ...(count < main.least ? [notice('few-main', { session, values: { count, least: main.least } })] : []),
    ...(landings > most ? [notice('many-landings', { level: 'caution', session, values: { landings, most } })] : []),
  ];
}
