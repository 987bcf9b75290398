import type { LitElement } from 'lit';
import { parseDocument } from '../../exchange/parse-document.js';
import type { Plan, PlanInputs } from '../../plan/document.js';
import { inputNames } from '../../plan/inputs.js';
import type { Planner } from '../../plan/planner.js';
import { planDocumentLimits, readPlanDocument, type SubmittedPlan } from '../../plan/read-plan-document.js';
import type { Problem } from '../../problem.js';
import type { Words } from '../../words/words.js';

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
  readonly late: { hold(plan: SubmittedPlan): void; reset(): void };
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
  /** What is to be put on the planner as soon as there is one. */
  #text = '';

  constructor(seat: FormSeat) {
    this.#seat = seat;
    const { host } = seat;
    // A label of the page that is pressed presses the planner.
    host.addEventListener('click', (event) => {
      if (event.composedPath()[0] === host) host.focus();
    });
    // Whoever hears of an act finds its plan in the form; and a person goes on from the plan on show.
    const follow = (): void => {
      this.problems = [];
      this.#submit();
    };
    host.addEventListener('plan-change', follow, { capture: true });
  }

  /** Gives the form the plan on show, and whether it may be submitted. */
  update(): void {
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
    const { host, internals, drafts, more } = this.#seat;
    const [problem] = [...host.problems, ...drafts.problems];
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

  /** Where a browser points to and puts the focus: what is wrong, else the first field. */
  #anchor(): HTMLElement | undefined {
    const find = (selector: string): HTMLElement | null => this.#seat.host.renderRoot.querySelector(selector);
    return find('[aria-invalid="true"]') ?? find('input, select, button') ?? undefined;
  }
}

const inValue = (path: string): string => (path === '' ? 'value' : `value.${path}`);
