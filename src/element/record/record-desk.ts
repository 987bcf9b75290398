import { render, type LitElement } from 'lit';
import type { Plan } from '../../plan/document.js';
import { doneInWeek } from '../../plan/record/acts.js';
import { weekPlanner, type WeekPlanner } from '../../plan/record/planned-week.js';
import type { WeekWishes } from '../../plan/week/wishes.js';
import type { Problem } from '../../problem.js';
import { recordLimits, type DoneSession } from '../../training/record/done-session.js';
import { matchSessions } from '../../training/record/match-sessions.js';
import { isoDate, knownDay, mondayDate } from '../../training/season/iso-date.js';
import type { Values } from '../../words/phrases.js';
import type { Board } from '../board/board.js';
import type { FullView, LatePanel } from '../controllers/late-panel-controller.js';
import type { TypedField } from '../fields/field-view.js';
import { FileDrop } from '../parts/file-drop.js';
import { today } from '../today.js';
import type { Draft } from '../view.js';
import { recordPanel } from './record-panel.js';
import { TableDesk } from './table-desk.js';
import { vocabularyOf } from './vocabulary.js';
import type { RecordDesk as Desk } from './record-view.js';

/** What a planner lets its record do. */
export interface RecordSeat {
  readonly host: LitElement;
  /** The days of the week; null where the page does not show them. */
  readonly week: () => Pick<Board, 'act'> | null;
  /** False where another panel takes the files that are dropped. */
  readonly isOpener: () => boolean;
}

/** What was done against what was planned; fetched where a page shows it. */
export class RecordDesk implements Desk, LatePanel {
  sessions: readonly DoneSession[] = [];
  drafts: ReadonlyMap<string, Draft> = new Map();
  start = mondayDate(today());
  message = '';
  notCopied: string | null = null;
  isFull = false;
  readonly tables = new TableDesk(() => {
    this.#update();
  });
  readonly #seat: RecordSeat;
  readonly #drop: FileDrop;
  readonly #open = new Set<string>();
  #view: FullView | null = null;
  #weeks: { readonly of: Plan; readonly planner: WeekPlanner } | null = null;
  #focus: string | null = null;

  constructor(seat: RecordSeat) {
    this.#seat = seat;
    this.#drop = new FileDrop(seat.host, (file) => this.bring(file));
  }

  /** Brings a table in from a disk. */
  async bring(file: File): Promise<void> {
    const { words, method } = this.#view ?? {};
    if (!words || !method) return;
    this.#open.add('in');
    await this.tables.takeFile(file, vocabularyOf(words, method));
    this.#focus = '#record-paste';
  }

  get today(): string {
    return today();
  }

  get canLay(): boolean {
    return this.#seat.week() !== null;
  }

  /** Takes over a record that could be read. */
  put(sessions: readonly DoneSession[]): void {
    this.sessions = sessions;
    this.drafts = new Map();
    this.isFull = false;
    this.notCopied = null;
    this.message = '';
  }

  reset(): void {
    this.put([]);
  }

  act(sessions: readonly DoneSession[], field?: TypedField): void {
    if (sessions.length > recordLimits.sessions) {
      this.isFull = true;
      this.say('record.full', { most: recordLimits.sessions });
      return;
    }
    if (field) this.forget(field.id);
    this.isFull = false;
    this.notCopied = null;
    this.message = '';
    this.sessions = sessions;
    this.#update();
  }

  refuse(problem: Problem, field?: TypedField): void {
    const named = field ? { ...problem, path: field.label } : problem;
    if (field) this.drafts = new Map(this.drafts).set(field.id, { text: field.text, problem: named });
    const { words, details } = this.#view ?? {};
    this.message = words && details ? details.sayProblem(words, named) : '';
    this.#update();
  }

  forget(id: string): void {
    const drafts = new Map(this.drafts);
    if (drafts.delete(id)) this.drafts = drafts;
  }

  show(start: string): void {
    this.start = mondayDate(start);
    this.drafts = new Map();
    this.isFull = false;
    this.#update();
  }

  say(key: string, values?: Values): void {
    this.message = this.#view?.words.say(key, values) ?? '';
    this.#update();
  }

  lay(wishes: WeekWishes): void {
    this.#seat.week()?.act(wishes);
    this.say('record.laid');
  }

  leave(text: string | null): void {
    this.notCopied = text;
  }

  isOpen(box: string): boolean {
    return this.#open.has(box);
  }

  toggle(box: string, isOpen: boolean): void {
    if (isOpen === this.#open.has(box)) return;
    if (isOpen) this.#open.add(box);
    else this.#open.delete(box);
    this.#update();
  }

  focusOn(selector: string): void {
    this.#focus = selector;
  }

  outdate(): void {
    // All is rendered at once.
  }

  render(container: HTMLElement, view: FullView): boolean {
    this.#view = view;
    const weeks = this.#weeksOf(view);
    const week = weeks(this.start);
    const end = isoDate(knownDay(this.start) + 6);
    const matched = matchSessions(week.sessions, doneInWeek(this.sessions, { start: this.start, end }));
    const hadFocus = focusIn(container) !== null;
    render(recordPanel({ ...view, desk: this, weeks, week, matched }), container, { host: this.#seat.host });
    if (this.#seat.isOpener()) this.#drop.listen(container);
    // Fields go with what was done: whoever was in one is not sent back to the beginning of the page.
    if (hadFocus && focusIn(container) === null) this.#focus ??= '#record-title';
    if (this.#focus !== null) container.querySelector<HTMLElement>(this.#focus)?.focus({ preventScroll: true });
    this.#focus = null;
    return false;
  }

  #weeksOf({ method, plan }: FullView): WeekPlanner {
    if (this.#weeks?.of !== plan) this.#weeks = { of: plan, planner: weekPlanner(method, plan) };
    return this.#weeks.planner;
  }

  #update(): void {
    this.#seat.host.requestUpdate();
  }
}

/** What has the focus in a place within a shadow root; null where nothing there has it. */
function focusIn(place: HTMLElement): Element | null {
  const root = place.getRootNode();
  const focused = root instanceof ShadowRoot ? root.activeElement : null;
  return focused && place.contains(focused) ? focused : null;
}
