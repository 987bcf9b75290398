import type { Problem } from '../problem.js';
import { latePlace } from './late-place.js';
import { splitPanel } from './split/split-panel.js';

/** The panels by the names that the attribute `panels` uses. */
export const panels = {
  split: splitPanel,
  sheet: latePlace('sheet'),
  week: latePlace('week', 'board'),
  season: latePlace('season', 'season-panel'),
  running: latePlace('running'),
  strength: latePlace('strength'),
  checks: latePlace('checks'),
  basis: latePlace('basis', 'basis-panel'),
  record: latePlace('record'),
  handout: latePlace('handout'),
} as const;
export type PanelName = keyof typeof panels;

/** Reads the attribute `panels`: names with spaces between them. */
export function readPanels(text: string): {
  readonly names: readonly PanelName[];
  readonly problems: readonly Problem[];
} {
  const words = text.split(/\s+/).filter((word) => word !== '');
  const isPanel = (word: string): word is PanelName => Object.hasOwn(panels, word);
  const unknown = words.filter((word) => !isPanel(word));
  return {
    names: words.filter(isPanel),
    problems: unknown.map((value) => ({
      path: 'panels',
      value,
      code: 'not-one-of',
      allowed: { choices: Object.keys(panels) },
    })),
  };
}
