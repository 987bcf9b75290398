import { LitElement, type PropertyDeclarations } from 'lit';
import { numberAttribute } from './number-attribute.js';

/**
 * What a page can say to a planner: its attributes and properties, and what every field of a form has.
 *
 * @attr lang - The language to speak: English, German, French, Spanish or Arabic; that of the page around it where left out.
 */
export class PlannerFace extends LitElement {
  /** The planner is a field of the form around it. */
  static readonly formAssociated = true;

  static override properties: PropertyDeclarations = {
    name: { reflect: true },
    disabled: { type: Boolean, noAccessor: true },
    required: { type: Boolean, noAccessor: true },
    label: {},
    value: { noAccessor: true },
    hours: { converter: numberAttribute },
    phase: {},
    level: {},
    event: {},
    strengthCap: { attribute: 'strength-cap', converter: numberAttribute },
    days: {},
    eventDate: { attribute: 'event-date' },
    mostHours: { attribute: 'most-hours', converter: numberAttribute },
    season: { attribute: false },
    race: {},
    running: { attribute: false },
    equipment: {},
    strength: { attribute: false },
    checks: { attribute: false },
    contact: {},
    storage: {},
    panels: {},
    method: { attribute: false },
    methodSrc: { attribute: 'method-src' },
  };

  /** The name under which a form submits the plan. */
  declare name: string | null | undefined;
  /** True where nobody can change anything; a form then submits nothing. */
  declare disabled: boolean;
  /** True where a form may not be submitted without a plan. */
  declare required: boolean;
  /** What the planner is called on this page, for whoever listens; “Training week planner” where left out. */
  declare label: string | null | undefined;
  /** Hours a week, 0.5 to 20 with the built-in method. The method's starting value where left out, as for all inputs. */
  declare hours: number | null | undefined;
  /** `off-season`, `base`, `build`, `peak`, `taper` or `recovery`. */
  declare phase: string | null | undefined;
  /** `new`, `developing`, `trained` or `elite`. */
  declare level: string | null | undefined;
  /** `none`, `5k`, `10k`, `half-marathon`, `marathon` or `longer`. */
  declare event: string | null | undefined;
  /** Most minutes of strength in a week of more than six hours, 90 to 120 with the built-in method. */
  declare strengthCap: number | null | undefined;
  /** Minutes available on each day to begin with, Monday first: `60,0,45,60,0,90,120`. For the panel `week`. */
  declare days: string | null | undefined;
  /** The day of the event: `2027-04-11`. For the panel `season`, as the next two. */
  declare eventDate: string | null | undefined;
  /** The most hours a week ever; the method's usual most where left out. */
  declare mostHours: number | null | undefined;
  /** What is wanted of the season beyond that, as in the request of a plan; see shared/schema/plan.schema.json. */
  declare season: unknown;
  /** A recent race, its distance and its time: `10k 45:00`; also `21.1km 1:39:00`. For the panel `running`. */
  declare race: string | null | undefined;
  /** What is known of the runner beyond that, as in the request of a plan; see shared/schema/plan.schema.json. */
  declare running: unknown;
  /** What there is to train with, of `band`, `dumbbells` and `barbell`, or `none`. For the panel `strength`. */
  declare equipment: string | null | undefined;
  /** What is wanted of strength beyond that, as in the request of a plan. */
  declare strength: unknown;
  /** What is told for checks, as in the request of a plan. For the panel `checks`. */
  declare checks: unknown;
  /** Whom to ask, as a line on what is handed over: a coach, a clinic. For the panel `handout`, as the next one. */
  declare contact: string | null | undefined;
  /** `none` forbids people to keep plans on their device; nothing is kept unless they ask for it. */
  declare storage: string | null | undefined;
  /** The panels to show, of `split`, `week`, `running`, `strength`, `checks`, `season`, `record`, `handout`, `sheet`, `basis`; `split` where left out. */
  declare panels: string | null | undefined;
  /** A coach's own method as plain data; see shared/schema/method.schema.json. */
  declare method: unknown;
  /** The address of a coach's own method, on the page's own origin. */
  declare methodSrc: string | null | undefined;

  /** The form around it. */
  declare readonly form: HTMLFormElement | null;
  /** The labels that the page has for it. */
  declare readonly labels: NodeList;
  /** What keeps a form from being submitted, if anything. */
  declare readonly validity: ValidityState;
  /** The same as a sentence. */
  declare readonly validationMessage: string;
  /** False where it is disabled. */
  declare readonly willValidate: boolean;
  protected readonly internals = this.attachInternals();

  checkValidity(): boolean {
    return this.internals.checkValidity();
  }

  reportValidity(): boolean {
    return this.internals.reportValidity();
  }

  /** Puts the focus on the first control in sight. */
  override focus(options?: FocusOptions): void {
    const controls = this.renderRoot.querySelectorAll<HTMLElement>('input, select, button, summary');
    [...controls].find((control) => control.checkVisibility())?.focus(options);
  }
}

for (const name of ['form', 'labels', 'validity', 'validationMessage', 'willValidate'] as const)
  Object.defineProperty(PlannerFace.prototype, name, {
    get(this: { readonly internals: ElementInternals }) {
      return this.internals[name];
    },
  });

// As fields of the browser have them: the attribute is the state.
for (const name of ['disabled', 'required'] as const)
  Object.defineProperty(PlannerFace.prototype, name, {
    get(this: PlannerFace) {
      return this.hasAttribute(name);
    },
    set(this: PlannerFace, isSo: unknown) {
      this.toggleAttribute(name, Boolean(isSo));
      this.requestUpdate();
    },
  });
