import type { LitElement } from 'lit';
import { parseDocument } from '../../exchange/parse-document.js';
import type { Plan, PlanInputs } from '../../plan/document.js';
import { inputNames } from '../../plan/inputs.js';
import type { Planner } from '../../plan/planner.js';
import { planDocumentLimits, readPlanDocument, type SubmittedPlan } from '../../plan/read-plan-document.js';
import type { Problem } from '../../problem.js';
import type { Words } from '../../words/words.js';
import { fireAsField } from './own-events.js';

/** What of a planner a form sees. */
interface FormHost extends LitElement {
  readonly plan: Plan | null;
  readonly value: string;
  readonly required: boolean;
  readonly problems: readonly Problem[];
}

/** What a planner lets a form do. */
export interface FormSeat {
  readonly host: FormHost;
  readonly internals: ElementInternals;
  /** Without a planner until the method is there. */
  readonly methods: { readonly planner: Planner | null };
  /** What was typed and is no value. */
  readonly drafts: { readonly problems: readonly Problem[]; forget(fields: readonly string[]): void };
  /** Panels, and what was typed on them. */
  readonly late: {
    readonly panels: readonly ({ readonly drafted?: readonly Problem[] } | null)[];
    hold(plan: SubmittedPlan): void;
    reset(): void;
  };
  /** Says a problem; nothing while the words for it are not there. */
  readonly more: { readonly words: Words | null; say(problem: Problem): string };
  /** Sets inputs and picked sessions; the page does it, nobody acts. */
  readonly set: (inputs: Partial<PlanInputs>, sessions: SubmittedPlan['sessions']) => void;
}

/** Inputs, which a form sets back to the attributes as it does with every field. */
const inputs = ['hours', 'phase', 'level', 'event', 'strength-cap'];

/** What a form needs of a planner: a value, its validity, a way back. */
export class FormPart {
  /** What is wrong with the value that was set. */
  problems: readonly Problem[] = [];
  readonly #seat: FormSeat;
  #submitted: Plan | null = null;
  #isHeard = false;
  /** What is to be put on the planner as soon as there is one. */
  #text = '';

  constructor(seat: FormSeat) {
    this.#seat = seat;
    const { host } = seat;
    followLabels(host);
    // Whoever hears of an act finds its plan in the form; and a person goes on from the plan on show.
    const follow = (): void => {
      this.problems = [];
      this.#submit();
    };
    host.addEventListener('plan-change', follow, { capture: true });
    // Panels come and go between updates: what the browser is about to point to is looked for when it does.
    host.addEventListener('invalid', () => {
      this.#validate();
    });
    // Labels name it from now on.
    host.requestUpdate();
  }

  /** What labels of the page say, also one around the planner. */
  get label(): string {
    const { host, internals } = this.#seat;
    const pieces = [...internals.labels].flatMap(({ childNodes }) => [...childNodes]);
    return pieces
      .map((piece) => (piece.contains(host) ? '' : piece.textContent))
      .join('')
      .trim();
  }

  /** Gives the form the plan on show, and whether it may be submitted. */
  update(): void {
    // Not before: where a value is set early, there is nothing rendered yet.
    if (!this.#isHeard) fireAsField(this.#seat.host);
    this.#isHeard = true;
    this.#put();
    this.#submit();
    this.#validate();
  }

  /** What a person has set is as the page says it again. */
  reset(): void {
    const { host, drafts, late, set } = this.#seat;
    drafts.forget(inputNames);
    late.reset();
    set({}, {});
    for (const name of inputs) host.attributeChangedCallback(name, null, host.getAttribute(name));
    this.take(host.getAttribute('value') ?? '');
  }

  /** Shows a plan that was submitted before; where it cannot be read, what is on show stays. */
  take(text: string): void {
    this.problems = [];
    this.#text = text;
    this.#put();
    this.#seat.host.requestUpdate();
  }

  #put(): void {
    const { methods, drafts, late, set } = this.#seat;
    const { method } = methods.planner ?? {};
    if (this.#text === '' || !method) return;
    const parsed = parseDocument(this.#text, planDocumentLimits);
    const read = parsed.ok ? readPlanDocument(parsed.value, method) : parsed;
    this.#text = '';
    if (!read.ok) {
      this.problems = read.problems.map((problem) => ({ ...problem, path: inValue(problem.path) }));
      this.#seat.host.requestUpdate();
      return;
    }
    drafts.forget(inputNames);
    late.hold(read.value);
    set(read.value.inputs, read.value.sessions);
  }

  #submit(): void {
    const { host, internals } = this.#seat;
    const { plan } = host;
    if (plan !== this.#submitted) internals.setFormValue(plan && host.value);
    this.#submitted = plan;
  }

  #validate(): void {
    const { host, internals, drafts, late, more } = this.#seat;
    const drafted = late.panels.flatMap((panel) => panel?.drafted ?? []);
    const [problem] = [...host.problems, ...drafts.problems, ...drafted];
    const isMissing = host.required && !host.plan;
    if (!problem && !isMissing) {
      internals.setValidity({});
      return;
    }
    const flags = problem ? { customError: true } : { valueMissing: true };
    const message = problem ? more.say(problem) : more.words?.say('screening.stopped');
    // A message is needed where anything is wrong; the words for it may be on their way.
    internals.setValidity(flags, message || '…', this.#anchor());
  }

  /** Where a browser points to and puts the focus: what is wrong, else the first that can have it. */
  #anchor(): HTMLElement | undefined {
    const find = (selector: string): HTMLElement | undefined =>
      [...this.#seat.host.renderRoot.querySelectorAll<HTMLElement>(selector)].find((each) => each.checkVisibility());
    return find('[aria-invalid="true"]') ?? find('input, select, button, summary');
  }
}

/** A label of the page that is pressed presses the planner; one around it also does so for what is pressed inside. */
function followLabels(host: HTMLElement): void {
  let isInside = false;
  const follow = (event: Event): void => {
    const isPlanner = event.composedPath()[0] === host;
    if (isPlanner && !isInside) host.focus();
    isInside = !isPlanner;
    setTimeout(() => {
      isInside = false;
    });
  };
  host.addEventListener('click', follow, { capture: true });
}

const inValue = (path: string): string => (path === '' ? 'value' : `value.${path}`);
