// All panels of a planner as they stand, so that tests can say that nothing of them is lost.
import type { ChecksPage } from './checks-page.js';
import { openChecks, scene } from './checks-page.js';
import { collapsed } from '../text.js';
import '../board/workers.js';

/** Where each panel stands; the split by its parts. */
export const planPanels = [
  ...['[part="answer"]', '[part="ring"]', '[part="inputs"]', '[part="table"]', '[part="notes"]'],
  ...['.sheet', '.board', '.season-panel', '.running', '.strength'],
] as const;

const allPanels = 'split week sheet season running strength checks';

/** A planner with everything on it, a season among it, and all of it there. */
export async function openWhole(attributes = `${scene} event-date="2027-04-11" race="10k 45:00"`): Promise<ChecksPage> {
  const page = await openChecks(attributes, allPanels);
  const there = ['.grid', '.board .day', '#season-week-title', '.running .lead', '.strength .lead'];
  return page.until(() => there.every((each) => page.has(each)), 'all panels come');
}

/** The panels of a plan that are in sight. */
export const shownPanels = (page: ChecksPage): string[] => planPanels.filter((each) => page.has(each));

/** What every panel but the checks shows, typed texts and chosen values included. */
export const state = (page: ChecksPage): Readonly<Record<string, string>> =>
  Object.fromEntries(
    planPanels.map((place) => {
      const found = page.root.querySelector(place);
      const fields = found?.querySelectorAll<HTMLInputElement | HTMLSelectElement>('input, select') ?? [];
      const values = [...fields].map((each) =>
        each instanceof HTMLInputElement && /radio|checkbox/.test(each.type) ? String(each.checked) : each.value,
      );
      return [place, `${found ? collapsed(found) : 'not there'} | ${values.join(' ')}`];
    }),
  );
