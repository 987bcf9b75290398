import { html, nothing, type TemplateResult } from 'lit';
import { live } from '../parts/live.js';
import { dayQuantities } from '../../training/method/week-names.js';
import { weekRules } from '../../plan/week/week-problem-of.js';
import type { WeekWishes } from '../../plan/week/wishes.js';
import { dayName } from '../../words/week/day-name.js';
import { actButton } from './act-button.js';
import type { BoardView } from './board-view.js';

const mostRestDays = 6;

/** What can be wished of the week as a whole. */
export function wishesBar(view: BoardView): TemplateResult {
  const { words, method, board, week } = view;
  const { wishes } = week;
  const set = (changed: Partial<WeekWishes>): void => {
    board.act({ ...wishes, ...changed });
  };
  const { templates } = weekRules(method);
  const template = templates.findIndex(({ minutes }) => minutes.join() === wishes.days.join());
  const days = dayQuantities.map((_, day) => words.capital(dayName(words, day)));
  return html`<div class="wishes">
    ${list({
      id: 'template',
      label: words.say('board.template'),
      options: [
        ...(template < 0 ? [words.say('board.template.own')] : []),
        ...templates.map(({ name }) => words.text(name)),
      ],
      at: Math.max(0, template),
      pick: (index) => {
        const chosen = templates[template < 0 ? index - 1 : index];
        if (chosen) set({ days: chosen.minutes });
      },
    })}
    ${list({
      id: 'long-run',
      label: words.say('board.long-run'),
      options: [words.say('board.long-run.any'), ...days],
      at: (wishes.longRun ?? -1) + 1,
      pick: (index) => {
        set({ longRun: index === 0 ? null : index - 1 });
      },
    })}
    ${list({
      id: 'rest-days',
      label: words.say('board.rest-days'),
      options: Array.from({ length: mostRestDays + 1 }, (_, count) => words.number(count)),
      at: wishes.restDays,
      pick: (restDays) => {
        set({ restDays });
      },
    })}
    ${list({
      id: 'sessions-a-day',
      label: words.say('board.sessions-a-day'),
      options: [1, 2, 3, 4, 5].map((count) => words.number(count)),
      at: wishes.sessionsADay - 1,
      pick: (index) => {
        set({ sessionsADay: index + 1 });
      },
    })}
    ${
      isTouched(wishes)
        ? actButton(words.say('board.anew'), () => {
            set({ free: [], pinned: [], done: [], passed: 0, sessions: {}, before: null });
          })
        : nothing
    }
  </div>`;
}

/** True where something was done to the week by hand. */
function isTouched({ pinned, done, passed, sessions, free }: WeekWishes): boolean {
  return pinned.length + done.length + passed + free.length + Object.keys(sessions).length > 0;
}

interface List {
  readonly id: string;
  readonly label: string;
  readonly options: readonly string[];
  readonly at: number;
  readonly pick: (index: number) => void;
}

function list({ id, label, options, at, pick }: List): TemplateResult {
  return html`<div class="wish">
    <label for="board-${id}">${label}</label>
    <select
      id="board-${id}"
      @change=${({ currentTarget }: Event) => {
        if (currentTarget instanceof HTMLSelectElement) pick(currentTarget.selectedIndex);
      }}
    >
      ${options.map((text, index) => html`<option .selected=${live(index === at)}>${text}</option>`)}
    </select>
  </div>`;
}
