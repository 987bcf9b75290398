import { html, type TemplateResult } from 'lit';
import { live } from '../parts/live.js';
import type { CategoryId } from '../../training/method/ids.js';
import { categoryName } from '../../words/category-name.js';
import type { View } from '../view.js';

/** The ways to cut a kind's minutes into sessions, as a list to pick from; a dash where there is nothing to cut. */
export function sessionPicker(view: View, category: CategoryId): TemplateResult {
  const { words, method, plan, act } = view;
  const options = plan.options[category];
  if (options.length === 0) return html`<span class="none" title=${words.say('planner.pick-none')}>–</span>`;
  const used = plan.sessions[category].join();
  const index = options.findIndex((option) => option.join() === used);
  const label = words.say('planner.pick-of', {
    minutes: words.minutes(plan.rounded[category]),
    kind: categoryName(words, method, category),
  });
  // A pick made at other hours may be no longer among the options listed, and still be one.
  const listed = index === -1 ? [plan.sessions[category], ...options] : options;
  return html`<select
    aria-label=${label}
    title=${label}
    @change=${({ currentTarget }: Event) => {
      if (!(currentTarget instanceof HTMLSelectElement)) return;
      const picked = listed[currentTarget.selectedIndex];
      // Whoever picks the best leaves it to the planner, also at other hours.
      act.pick(category, picked === options[0] ? null : (picked ?? null));
    }}
  >
    ${listed.map(
      (option) => html`<option .selected=${live(option.join() === used)}>${words.sessions(option)}</option>`,
    )}
  </select>`;
}
