// The numbers of the screen as they have to read, written from the plan by other means than the planner's own.

const inEnglish = new Intl.NumberFormat('en', { maximumFractionDigits: 1 });

export const figure = (value: number): string => inEnglish.format(value);

export const percent = (share: number): string => `${figure(share * 100)}%`;

/** "30 + 45"; equal sessions together: "3 × 25". */
export function sum(sessions: readonly number[]): string {
  const kinds = [...new Set(sessions)].map((minutes) => ({
    minutes,
    count: sessions.filter((each) => each === minutes).length,
  }));
  const terms = kinds.map(({ minutes, count }) =>
    count === 1 ? figure(minutes) : `${figure(count)} × ${figure(minutes)}`,
  );
  return terms.length === 0 ? '–' : terms.join(' + ');
}
