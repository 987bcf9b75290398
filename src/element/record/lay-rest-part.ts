import { html, nothing, type TemplateResult } from 'lit';
import { addDone, doneInWeek } from '../../plan/record/acts.js';
import { layRest } from '../../plan/record/lay-rest.js';
import type { PlacedSession } from '../../plan/week/wishes.js';
import type { DoneSession } from '../../training/record/done-session.js';
import { isoDate, knownDay, mondayDate } from '../../training/season/iso-date.js';
import type { RecordView } from './record-view.js';

/** Lays what is left of the week again; and takes over what was marked as done on the days. */
export function layRestPart(view: RecordView): TemplateResult {
  const { words, desk } = view;
  const reason = whyNot(view);
  const marked = markedDone(view);
  return html`<div class="record-rest">
    <button
      type="button"
      class="act"
      aria-disabled=${reason ? 'true' : 'false'}
      aria-describedby="record-rest-hint"
      @click=${() => {
        if (!reason) lay(view);
      }}
    >
      ${words.say('record.lay')}
    </button>
    ${
      marked.length === 0
        ? nothing
        : html`<button
            type="button"
            class="act"
            @click=${() => {
              desk.act(marked.reduce(addDone, desk.sessions));
              desk.say('record.in.taken', { count: marked.length });
              desk.focusOn('#record-title');
            }}
          >
            ${words.say('record.take-over', { count: marked.length })}
          </button>`
    }
    <p class="hint" id="record-rest-hint">${words.say(reason ?? 'record.lay.about')}</p>
  </div>`;
}

/** Why the rest cannot be laid; null where it can. */
function whyNot({ desk, plan, week }: RecordView): string | null {
  if (!desk.canLay || !plan.week) return 'record.lay.no-days';
  if (week.plan !== plan) return 'record.lay.other-week';
  if (desk.today > isoDate(knownDay(desk.start) + 6)) return 'record.lay.over';
  // Without a season every week is the one on show: what was done in it would no longer count.
  if (!week.season && desk.start > desk.today) return 'record.lay.not-yet';
  return null;
}

function lay({ desk, plan, method }: RecordView): void {
  if (!plan.week) return;
  const { start, today } = desk;
  const done = doneInWeek(desk.sessions, { start, end: isoDate(knownDay(start) + 6) });
  desk.lay(layRest(plan.week, { done, start, from: today, step: method.rounding.step, rounded: plan.rounded }));
}

/** What is marked as done on the days, and is not in the record. Marks have no date: they are of the week that is now. */
function markedDone({ desk, plan, week, matched }: RecordView): readonly DoneSession[] {
  if (week.plan !== plan || desk.start !== mondayDate(desk.today)) return [];
  const there = [...matched.planned.flatMap(({ done }) => done ?? []), ...matched.extra];
  const toDone = ({ category, minutes, day }: PlacedSession): DoneSession => ({
    date: isoDate(knownDay(desk.start) + day),
    category,
    minutes,
    effort: null,
  });
  return (plan.week?.wishes.done ?? [])
    .map(toDone)
    .filter((session) => !there.some(({ date, category }) => date === session.date && category === session.category));
}
