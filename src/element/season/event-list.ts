import { html, type TemplateResult } from 'lit';
import { live } from '../parts/live.js';
import type { OtherEvent } from '../../plan/season/wishes.js';
import { eventIds } from '../../training/method/ids.js';
import { seasonLimits } from '../../training/method/season-rules.js';
import { isoDate, knownDay } from '../../training/season/iso-date.js';
import { dateField } from '../fields/fields.js';
import type { SeasonView } from './season-view.js';

/** Further events: their weeks are easier, and the season goes on to the last of them. */
export function eventList(view: SeasonView): TemplateResult {
  const { words, season, request, desk } = view;
  const { events, date } = season.wishes;
  const isFull = events.length >= seasonLimits.events;
  return html`<h4>${words.say('season.events')}</h4>
    <ul class="season-events">
      ${events.map((event, index) => eventItem(view, event, index))}
    </ul>
    <p>
      <button
        type="button"
        class="act"
        aria-disabled=${isFull ? 'true' : 'false'}
        @click=${() => {
          // Four weeks before the main one: a place to begin with.
          const added = { date: isoDate(knownDay(date) - 28), event: '10k' as const };
          if (!isFull) desk.step({ ...request, events: [...events, added] });
        }}
      >
        ${words.say('season.events.add')}
      </button>
    </p>`;
}

function eventItem(view: SeasonView, event: OtherEvent, index: number): TemplateResult {
  const { words, season, request, desk } = view;
  const { events } = season.wishes;
  const place = words.number(index + 1);
  const withChanged = (next: OtherEvent): readonly OtherEvent[] =>
    events.map((each, at) => (at === index ? next : each));
  return html`<li>
    ${dateField(view, {
      id: `season-event-${index}`,
      label: words.say('season.events.date', { place }),
      value: event.date,
      set: (date) => ({ ...request, events: withChanged({ ...event, date }) }),
    })}
    <select
      aria-label=${words.say('season.events.event', { place })}
      @change=${({ currentTarget }: Event) => {
        const chosen = currentTarget instanceof HTMLSelectElement ? eventIds[currentTarget.selectedIndex] : undefined;
        if (chosen) desk.step({ ...request, events: withChanged({ ...event, event: chosen }) });
      }}
    >
      ${eventIds.map((id) => html`<option .selected=${live(id === event.event)}>${words.say(`event.${id}`)}</option>`)}
    </select>
    <button
      type="button"
      class="act"
      aria-label=${words.say('season.events.remove.name', { place })}
      @click=${() => {
        desk.step({ ...request, events: events.filter((_, at) => at !== index) });
      }}
    >
      ${words.say('season.events.remove')}
    </button>
  </li>`;
}
