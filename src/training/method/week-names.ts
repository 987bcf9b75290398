/** The quantities that hold the minutes of the days, Monday first, where a sheet has days. */
export const dayQuantities = [
  'monday_minutes',
  'tuesday_minutes',
  'wednesday_minutes',
  'thursday_minutes',
  'friday_minutes',
  'saturday_minutes',
  'sunday_minutes',
] as const;

/** The quantity that holds what the week laid on these days costs. */
export const weekCost = 'week_cost';

/** Names that no other quantity may have. */
export const weekQuantities: readonly string[] = [...dayQuantities, weekCost];
