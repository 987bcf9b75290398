import { render } from 'lit';
import type { ReactiveController } from 'lit';
import { keptFileLimits, readKeptText, type KeptPlan } from '../../exchange/kept-file.js';
import { readPlanFileText } from '../../exchange/plan-file.js';
import type { HandoutTexts, PlanFile } from '../../plan/file/document.js';
import { toldIn } from '../../plan/handout/concrete-plan.js';
import { weekPlanner, type WeekPlanner } from '../../plan/record/planned-week.js';
import type { Plan } from '../../plan/document.js';
import { faultyDate } from '../../plan/faulty-date.js';
import type { Outcome, Problem } from '../../problem.js';
import { isoDate, knownDay, mondayDate, mondayOf } from '../../training/season/iso-date.js';
import type { FullView, LatePanel } from '../controllers/late-panel-controller.js';
import type { TypedField } from '../fields/field-view.js';
import { KeptPlans } from '../keep/kept-plans.js';
import { linkKey, partOf } from '../link/fragment.js';
import { today } from '../today.js';
import type { Draft } from '../view.js';
import { collect, nothingCarried, type Carried } from './collect.js';
import { FileDrop } from '../parts/file-drop.js';
import { renderFocused } from '../parts/focused-in.js';
import { handoutPanel } from './handout-panel.js';
import type { HandoutSeat } from './handout-seat.js';
import type { HandoutChange, HandoutChoices, HandoutDesk as Desk, HandoutMessage } from './handout-view.js';
import { usualPaper } from './print/papers.js';
import { put } from './put.js';
import { storageProblems } from './storage.js';

/** What a page says to the panel. */
export interface HandoutAttributes {
  readonly contact: string | null | undefined;
  readonly storage: string | null | undefined;
}

const firstChoices = (): HandoutChoices => ({
  what: 'week',
  start: nextMonday(today()),
  paper: usualPaper(navigator.languages),
  ink: 'black',
  isTimed: false,
  usual: '18:00',
  early: '07:00',
  isBare: false,
});

const noTexts: HandoutTexts = { runner: '', contact: '', note: '' };

/** What is handed over: on paper, as files, as a link; fetched where a page shows it. */
export class HandoutDesk implements Desk, LatePanel, ReactiveController {
  name = '';
  drafts: ReadonlyMap<string, Draft> = new Map();
  message: HandoutMessage | null = null;
  choices = firstChoices();
  offered: readonly KeptPlan[] = [];
  readonly kept = new KeptPlans(() => {
    this.update();
  });
  readonly #seat: HandoutSeat;
  readonly #drop: FileDrop;
  readonly #open = new Set(['look']);
  #typed: Partial<HandoutTexts> = {};
  #page: HandoutAttributes = { contact: null, storage: null };
  #carried: Carried = nothingCarried;
  #before: PlanFile | null = null;
  #view: FullView | null = null;
  #weeks: { readonly of: Plan; readonly planner: WeekPlanner } | null = null;
  #isLinkLookedFor = false;

  constructor(seat: HandoutSeat) {
    this.#seat = seat;
    this.#drop = new FileDrop(seat.host, (file) => this.openFile(file));
    seat.host.addController(this);
  }

  hostConnected(): void {
    addEventListener('hashchange', this.#openLink);
  }

  hostDisconnected(): void {
    removeEventListener('hashchange', this.#openLink);
  }

  reset(): void {
    Object.assign(this, { name: '', drafts: new Map(), message: null, choices: firstChoices() });
    this.#typed = {};
    this.#carried = nothingCarried;
    this.#before = null;
  }

  hear({ contact, storage }: HandoutAttributes): void {
    this.#page = { contact, storage };
  }

  get problems(): readonly Problem[] {
    return storageProblems(this.#page.storage);
  }

  get mayKeep(): boolean {
    return this.#page.storage !== 'none';
  }

  get texts(): HandoutTexts {
    return { ...noTexts, contact: this.#page.contact ?? '', ...this.#typed };
  }

  get canGoBack(): boolean {
    return this.#before !== null;
  }

  act(change: HandoutChange, field?: TypedField): void {
    const [problem] = [...faultyDate('start', change.start), ...faultyTimes(change, this.choices)];
    if (problem) {
      this.refuse(problem, field);
      return;
    }
    const { name, runner, contact, note, start, ...choices } = change;
    const typed = { runner, contact, note };
    this.#typed = {
      ...this.#typed,
      ...Object.fromEntries(Object.entries(typed).filter(([, text]) => text !== undefined)),
    };
    this.choices = { ...this.choices, ...choices, ...(start === undefined ? {} : { start: mondayDate(start) }) };
    this.name = name ?? this.name;
    if (field) this.#forget(field.id);
    this.say(null);
  }

  refuse(problem: Problem, field?: TypedField): void {
    if (!field) return;
    const named = { ...problem, path: field.label };
    this.drafts = new Map(this.drafts).set(field.id, { text: field.text, problem: named });
    this.update();
  }

  say(message: HandoutMessage | null): void {
    this.message = message;
    this.update();
  }

  update(): void {
    this.#seat.host.requestUpdate();
  }

  isOpen(box: string): boolean {
    return this.#open.has(box);
  }

  toggle(box: string, isOpen: boolean): void {
    if (isOpen === this.#open.has(box)) return;
    if (isOpen) this.#open.add(box);
    else this.#open.delete(box);
    this.update();
  }

  collect(): PlanFile | null {
    if (!this.#view) return null;
    return { ...collect(this.#seat, this.#view, this.#carried), name: this.name, handout: this.texts };
  }

  async openFile(file: File): Promise<void> {
    const record = this.#seat.late.record.panel;
    if (record && isTable(file)) {
      await record.bring(file);
      return;
    }
    // A character has one byte and more: what is longer cannot be read anyway.
    const most = keptFileLimits.characters;
    if (file.size > 4 * most) {
      const problem: Problem = { path: file.name, value: file.size, code: 'too-long', allowed: { most } };
      this.say({ key: 'handout.faulty-file', problems: [problem] });
      return;
    }
    const text = await file.text().catch(() => null);
    if (text === null) {
      // A folder, or a file that is gone.
      this.say({ key: 'handout.unreadable', values: { name: file.name } });
      return;
    }
    this.offered = [];
    await this.open(text);
  }

  async open(text: string): Promise<void> {
    const { method } = this;
    if (!method) return;
    const several = readKeptText(text);
    if (several) {
      this.offered = several.ok ? several.value : [];
      const key = this.offered.length > 0 ? 'handout.several' : 'handout.none-in-it';
      this.say(several.ok ? { key } : { key: 'handout.faulty-file', problems: several.problems });
      return;
    }
    await this.#use(readPlanFileText(text, method), { opened: 'handout.opened', faulty: 'handout.faulty-file' });
  }

  async goBack(): Promise<void> {
    const before = this.#before;
    if (!before) return;
    this.#before = null;
    await this.#put(before);
    this.say({ key: 'handout.went-back' });
  }

  outdate(): void {
    // All is rendered at once.
  }

  render(container: HTMLElement, view: FullView): boolean {
    this.#view = view;
    const weeks = this.#weeksOf(view);
    const content = handoutPanel({ ...view, host: this.#seat.host, desk: this, weeks, told: toldIn(view.plan) });
    renderFocused(container, '#handout-title', () => render(content, container, { host: this.#seat.host }));
    this.#drop.listen(container);
    if (!this.#isLinkLookedFor) {
      this.#isLinkLookedFor = true;
      this.#openLink();
    }
    return false;
  }

  #forget(id: string): void {
    const drafts = new Map(this.drafts);
    if (drafts.delete(id)) this.drafts = drafts;
  }

  /** The method that plans are read by: that of the sheet, where there is one. */
  get method(): FullView['method'] | null {
    return this.#seat.late.sheet.panel?.whole?.sheet.method ?? this.#view?.method ?? null;
  }

  #weeksOf({ method, plan }: FullView): WeekPlanner {
    if (this.#weeks?.of !== plan) this.#weeks = { of: plan, planner: weekPlanner(method, plan) };
    return this.#weeks.planner;
  }

  readonly #openLink = (): void => {
    void this.#readLink();
  };

  async #readLink(): Promise<void> {
    const place = { href: location.href, key: linkKey(this.#seat.host.id) };
    if (partOf(place.href, place.key) === null) return;
    const { readLink } = await import('../link/link.js');
    await this.#seat.late.sheet.panel?.begun;
    const { method } = this;
    const file = method && (await readLink(place, method));
    if (file) await this.#use(file, { opened: 'handout.link-opened', faulty: 'handout.faulty-link' });
  }

  /** Opens what could be read; what could not changes nothing. */
  async #use(
    file: Outcome<PlanFile>,
    { opened, faulty }: { readonly opened: string; readonly faulty: string },
  ): Promise<void> {
    if (!file.ok) {
      this.say({ key: faulty, problems: file.problems });
      return;
    }
    const before = this.collect();
    const { problems, notShown } = await this.#put(file.value);
    if (problems.length > 0) {
      this.say({ key: faulty, problems });
      return;
    }
    this.#before = before;
    this.say({ key: opened, values: { name: file.value.name, count: file.value.sheet.scenarios.length }, notShown });
  }

  async #put(file: PlanFile): ReturnType<typeof put> {
    const done = await put(this.#seat, file);
    if (done.problems.length > 0) return done;
    const { running, strength, checks, record } = file;
    this.#carried = { running, strength, checks, record };
    this.name = file.name;
    this.#typed = file.handout;
    this.drafts = new Map();
    return done;
  }
}

/** What is dropped is told from a plan by its name: browsers do not agree on types. */
const isTable = ({ name }: File): boolean => /\.(csv|tsv|txt)$/i.test(name);

/** Times of day that are none (a field for times gives an empty text then), or that are in the wrong order. */
function faultyTimes({ usual, early }: HandoutChange, now: HandoutChoices): Problem[] {
  const isTime = (text: string): boolean => /^([01]\d|2[0-3]):[0-5]\d$/.test(text);
  const none = Object.entries({ usual, early })
    .filter(([, text]) => text !== undefined && !isTime(text))
    .map(([path, value]): Problem => ({ path, value, code: 'wrong-type', allowed: { expected: 'time-of-day' } }));
  const order = { early: early ?? now.early, usual: usual ?? now.usual };
  if (none.length > 0 || order.early < order.usual) return none;
  const value = early ?? usual;
  return [{ path: 'early', value, code: 'wrong-order', allowed: { before: order.early, after: order.usual } }];
}

/** A plan that is handed over from Friday on is for the week to come. */
function nextMonday(date: string): string {
  const day = knownDay(date);
  const monday = mondayOf(day);
  return isoDate(day - monday >= 4 ? monday + 7 : monday);
}
