import type { ConstantQuantity, FormulaQuantity, InputQuantity, SheetModel, SheetRule } from '../../sheet/model.js';
import { roundingBlock } from './rounding-block.js';
import type { ChangeRule, Method, NoticeRule } from './document.js';
import { eventIds, levelIds, phaseIds } from './ids.js';
import {
  categoryQuantity,
  choiceNames,
  noticeQuantity,
  splitQuantity,
  splitShareQuantity,
  strengthUpkeep,
} from './names.js';

/**
 * The sheet of a method: every share, limit and rule becomes a named quantity or a rule on one, so that what a person
 * reads in the sheet is what computes the plan.
 */
export function expandMethod(method: Method): SheetModel {
  return {
    inputs: inputs(method),
    constants: constants(method),
    formulas: [
      ...splitFormulas(method),
      ...minuteFormulas(method),
      ...noticeFormulas(method),
      ...(method.quantities ?? []),
    ],
    rules: method.rules.filter((rule) => rule.kind === 'change').map(sheetRule),
    blocks: [roundingBlock(method)],
    overrides: [],
    sharings: [],
    names: choiceNames,
  };
}

function inputs({ inputs: given }: Method): InputQuantity[] {
  const choice = (ids: readonly string[], start: string): Omit<InputQuantity, 'id'> => ({
    least: 0,
    most: ids.length - 1,
    step: 1,
    start: ids.indexOf(start),
    isChoice: true,
  });
  return [
    { id: 'weekly_hours', ...given.weekly_hours, isChoice: false },
    { id: 'season_phase', ...choice(phaseIds, given.season_phase.start) },
    { id: 'athlete_level', ...choice(levelIds, given.athlete_level.start) },
    { id: 'target_event', ...choice(eventIds, given.target_event.start) },
    { id: 'strength_cap', ...given.strength_cap, isChoice: false },
  ];
}

function constants({ categories, splits }: Method): ConstantQuantity[] {
  const shares = splits.flatMap((split) =>
    categories.map(({ id }) => ({ id: splitShareQuantity(split.id, id), constant: split.shares[id] })),
  );
  const limits = categories.flatMap(({ id, session }) =>
    (['shortest', 'typical', 'longest'] as const).map((what) => ({
      id: categoryQuantity(id, what),
      constant: session[what],
    })),
  );
  // How much strength a week may have where it is only kept up; a season sets it, 0 is no limit.
  return [...shares, ...limits, { id: strengthUpkeep, constant: 0 }];
}

/** `slow_share` is a choice among the splits' shares: the first split that holds, else the last. */
function splitFormulas({ categories, splits }: Method): FormulaQuantity[] {
  const conditional = splits.flatMap(({ id, when }) =>
    when === undefined ? [] : [{ id: splitQuantity(id), formula: when }],
  );
  const shares = categories.map(({ id: category }) => {
    const branches = splits.map((split) => {
      const share = splitShareQuantity(split.id, category);
      return split.when === undefined ? share : `${splitQuantity(split.id)} ? ${share}`;
    });
    return { id: categoryQuantity(category, 'share'), formula: branches.join(' : ') };
  });
  return [...conditional, ...shares];
}

function minuteFormulas({ categories }: Method): FormulaQuantity[] {
  const minutes = categories.map(({ id }) => ({
    id: categoryQuantity(id, 'minutes'),
    formula: `weekly_minutes * ${categoryQuantity(id, 'share')}`,
  }));
  return [
    { id: 'weekly_minutes', formula: 'weekly_hours * 60' },
    ...minutes,
    { id: 'planned_minutes', formula: categories.map(({ id }) => categoryQuantity(id, 'minutes')).join(' + ') },
    { id: 'running_minutes', formula: 'slow_minutes + tempo_minutes + intervals_minutes' },
    { id: 'running_share', formula: 'running_minutes / weekly_minutes' },
  ];
}

function noticeFormulas({ rules }: Method): FormulaQuantity[] {
  const isDue = (rule: ChangeRule | NoticeRule): rule is NoticeRule => rule.kind === 'notice' && rule.enabled !== false;
  return rules.filter(isDue).map(({ id, when }) => ({ id: noticeQuantity(id), formula: when }));
}

function sheetRule({ id, on, when, value, to, enabled }: ChangeRule): SheetRule {
  return { id, on, when, value, to, enabled: enabled !== false };
}
