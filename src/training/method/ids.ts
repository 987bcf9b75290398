/** The kinds of training a week is divided among, in the order in which screens and files list them. */
export const categoryIds = ['slow', 'tempo', 'intervals', 'cross', 'strength'] as const;
export type CategoryId = (typeof categoryIds)[number];

/** The phases of a season. */
export const phaseIds = ['off-season', 'base', 'build', 'peak', 'taper', 'recovery'] as const;
export type PhaseId = (typeof phaseIds)[number];

/** How trained the runner is, from least to most. */
export const levelIds = ['new', 'developing', 'trained', 'elite'] as const;
export type LevelId = (typeof levelIds)[number];

/** The event trained for, from shortest to longest. */
export const eventIds = ['none', '5k', '10k', 'half-marathon', 'marathon', 'longer'] as const;
export type EventId = (typeof eventIds)[number];

/** How well a number or a rule is founded: a published source, what coaches commonly do, or our own assumption. */
export const statusIds = ['published', 'common practice', 'assumption'] as const;
export type Status = (typeof statusIds)[number];

/** Words in a method: a coach's own text, or the key of a text in the locales (shared/locales). */
export type Text = string | { readonly key: string };

/** One value for each category. */
export type ByCategory<T> = Readonly<Record<CategoryId, T>>;

/** Makes one value for each category: `byCategory((id) => id.length).slow` is 4. */
export function byCategory<T>(value: (id: CategoryId) => T): ByCategory<T> {
  return {
    slow: value('slow'),
    tempo: value('tempo'),
    intervals: value('intervals'),
    cross: value('cross'),
    strength: value('strength'),
  };
}
