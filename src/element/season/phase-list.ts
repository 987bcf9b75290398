import { html, nothing, type TemplateResult } from 'lit';
import { live } from '../parts/live.js';
import type { WishedPhase } from '../../plan/season/wishes.js';
import { seasonLimits, seasonPhaseIds } from '../../training/method/season-rules.js';
import type { SeasonView } from './season-view.js';

/** The phases before the taper, each with its weeks: they can be moved, given other weeks, taken out and added. */
export function phaseList(view: SeasonView): TemplateResult {
  const { words, season, request, desk } = view;
  const { phases } = season.wishes;
  const set = (next: readonly WishedPhase[]): void => {
    desk.step({ ...request, phases: next });
  };
  const isFull = phases.length >= seasonLimits.phases;
  return html`<h4>${words.say('season.phases')}</h4>
    <ol class="season-phases">
      ${phases.map((phase, index) => phaseItem(view, { phase, index, set }))}
    </ol>
    <p>
      <button
        type="button"
        class="act"
        aria-disabled=${isFull ? 'true' : 'false'}
        @click=${() => {
          if (!isFull) set([{ phase: 'off-season', weeks: null }, ...phases]);
        }}
      >
        ${words.say('season.phases.add')}
      </button>
    </p>`;
}

interface PhaseItem {
  readonly phase: WishedPhase;
  readonly index: number;
  readonly set: (phases: readonly WishedPhase[]) => void;
}

function phaseItem({ words, season }: SeasonView, { phase: wished, index, set }: PhaseItem): TemplateResult {
  const { phases } = season.wishes;
  const change = (next: WishedPhase): void => {
    set(phases.map((each, place) => (place === index ? next : each)));
  };
  const name = words.say(`phase.${wished.phase}`);
  const length = season.phases[index]?.weeks ?? 0;
  const place = words.number(index + 1);
  const lengths = lengthsFor(wished.weeks);
  return html`<li>
    <select
      aria-label=${words.say('season.phases.phase', { place })}
      @change=${({ currentTarget }: Event) => {
        const chosen =
          currentTarget instanceof HTMLSelectElement ? seasonPhaseIds[currentTarget.selectedIndex] : undefined;
        if (chosen) change({ ...wished, phase: chosen });
      }}
    >
      ${seasonPhaseIds.map(
        (id) => html`<option .selected=${live(id === wished.phase)}>${words.say(`phase.${id}`)}</option>`,
      )}
    </select>
    <select
      aria-label=${words.say('season.phases.weeks', { place })}
      @change=${({ currentTarget }: Event) => {
        if (!(currentTarget instanceof HTMLSelectElement)) return;
        change({ ...wished, weeks: lengths[currentTarget.selectedIndex - 1] ?? null });
      }}
    >
      <option .selected=${live(wished.weeks === null)}>
        ${words.say('season.phases.share', { weeks: words.say('season.weeks', { count: length }) })}
      </option>
      ${lengths.map(
        (weeks) =>
          html`<option .selected=${live(wished.weeks === weeks)}>
            ${words.say('season.weeks', { count: weeks })}
          </option>`,
      )}
    </select>
    ${
      wished.weeks !== null && wished.weeks !== length
        ? html`<span class="quiet"
            >${words.say('season.phases.now', { weeks: words.say('season.weeks', { count: length }) })}</span
          >`
        : nothing
    }
    <span class="phase-acts">
      ${actButton({
        sign: '↑',
        label: words.say('season.phases.earlier', { phase: name, place }),
        isPossible: index > 0,
        act: () => {
          set(swapped(phases, index - 1));
        },
      })}
      ${actButton({
        sign: '↓',
        label: words.say('season.phases.later', { phase: name, place }),
        isPossible: index < phases.length - 1,
        act: () => {
          set(swapped(phases, index));
        },
      })}
      ${actButton({
        sign: '×',
        label: words.say('season.phases.remove', { phase: name, place }),
        isPossible: phases.length > 1,
        act: () => {
          set(phases.filter((_, place) => place !== index));
        },
      })}
    </span>
  </li>`;
}

const mostWeeks = 30;

/** Weeks to choose from, and those that were asked for where they are not among them. */
function lengthsFor(weeks: number | null): readonly number[] {
  const usual = Array.from({ length: mostWeeks }, (_, index) => index + 1);
  return weeks === null || usual.includes(weeks) ? usual : [...usual, weeks];
}

/** The list with the phase at a place after the one behind it. */
function swapped(phases: readonly WishedPhase[], place: number): readonly WishedPhase[] {
  const [one, other] = [phases[place], phases[place + 1]];
  return one && other ? [...phases.slice(0, place), other, one, ...phases.slice(place + 2)] : phases;
}

interface PhaseAct {
  readonly sign: string;
  readonly label: string;
  readonly isPossible: boolean;
  readonly act: () => void;
}

const actButton = ({ sign, label, isPossible, act }: PhaseAct): TemplateResult =>
  html`<button
    type="button"
    aria-label=${label}
    title=${label}
    aria-disabled=${isPossible ? 'false' : 'true'}
    @click=${() => {
      if (isPossible) act();
    }}
  >
    ${sign}
  </button>`;
