import { spreadLegs } from '../../training/strength/spread-legs.js';
import { stageOf } from '../../training/strength/stage-of.js';
import type { Plan } from '../document.js';
import { sessionsOf } from '../sessions-of.js';
import type { PlanStrength } from './document.js';
import { hardDays } from './hard-days.js';
import { maximaOf } from './maxima.js';
import type { StrengthGround } from './strength-ground.js';
import { strengthNotices } from './strength-notices.js';
import { strengthSession, type SessionPlace } from './strength-session.js';
import type { StrengthWishes } from './wishes.js';

/** The strength sessions of a plan's week, filled. */
export function makeStrength(plan: Plan, wishes: StrengthWishes, { rules, movements }: StrengthGround): PlanStrength {
  const stage = stageOf(rules.stages, plan.inputs.phase, plan.inputs.level);
  const planned = sessionsOf(plan, ['strength']);
  const days = planned.map(({ day }) => day);
  const places = spreadLegs(days, hardDays(plan), rules.spared.days_before).flatMap(({ legs, list }, index) => {
    const session = planned[index];
    const patterns = rules.sessions[list % rules.sessions.length];
    return session && patterns ? [{ planned: session, legs, patterns } satisfies SessionPlace] : [];
  });
  const maxima = maximaOf(wishes.lifted);
  const { equipment, forms } = wishes;
  const ground = { rules, movements, stage, equipment, forms, maxima, wishes };
  const sessions = places.map((place) => strengthSession(place, ground));
  const patterns = [...new Set(places.flatMap((place) => place.patterns))];
  const notices = strengthNotices({ sessions, patterns, ground, phase: plan.inputs.phase });
  return { wishes, stage: stage.id, sessions, maxima, notices };
}
