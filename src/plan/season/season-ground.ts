import { builtInSeason } from '../../training/method/built-in-season.js';
import type { Method } from '../../training/method/document.js';
import type { SeasonRules } from '../../training/method/season-rules.js';
import type { PlanInputs } from '../document.js';

/** What a season is read with: the method, and the inputs of the same request. */
export interface SeasonGround {
  readonly method: Method;
  readonly inputs: Pick<PlanInputs, 'hours'>;
}

/** How a method carries a season: by its own rules, or by those of the built-in method. */
export const seasonRules = ({ season }: Pick<Method, 'season'>): SeasonRules => season ?? builtInSeason;
