/** How a plan stands to a piece of guidance, from good to bad. */
export const checkLevels = ['in-line', 'look', 'caution'] as const;
export type CheckLevel = (typeof checkLevels)[number];
