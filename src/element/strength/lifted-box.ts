import { html, nothing, type TemplateResult } from 'lit';
import { strengthGround } from '../../plan/strength/strength-ground.js';
import { strengthLimits, type StrengthRequest } from '../../plan/strength/wishes.js';
import { maximumLine } from '../../words/strength/maximum-line.js';
import { movementName } from '../../words/strength/movement-text.js';
import { amountField } from '../fields/amount-field.js';
import type { StrengthView } from './strength-view.js';

const parts = ['kilograms', 'repetitions'] as const;

/** Sets that tell what can be lifted, for the movements of the week that take a weight; and the age. */
export function liftedBox(view: StrengthView): TemplateResult {
  const { words } = view;
  const movements = loadedMovements(view);
  return html`<p>${words.say(movements.length > 0 ? 'strength.lifted.about' : 'strength.lifted.none')}</p>
    <p class="quiet">${words.say('running.private')}</p>
    <ul class="lifted">
      ${movements.map((movement) => liftedItem(view, movement))}
    </ul>
    <div class="concrete-inputs">${ageField(view)}</div>`;
}

/** Movements of the week that take a weight, and those that a set has been told of. */
function loadedMovements({ strength }: StrengthView): readonly string[] {
  const exercises = strength.sessions.flatMap(({ blocks }) => blocks.flatMap((block) => block.exercises));
  const loaded = exercises.filter(({ share }) => share !== null).map(({ movement }) => movement);
  return [...new Set([...loaded, ...strength.wishes.lifted.map(({ movement }) => movement)])];
}

function liftedItem(view: StrengthView, movement: string): TemplateResult {
  const { words, method, strength } = view;
  const maximum = strength.maxima.find((each) => each.movement === movement);
  return html`<li>
    <fieldset class="concrete-inputs">
      <legend>${movementName(words, method, movement)}</legend>
      ${parts.map((part) => partField(view, { movement, part }))}
    </fieldset>
    ${maximum ? html`<p class="quiet">${maximumLine(words, maximum)}</p>` : nothing}
  </li>`;
}

interface Part {
  readonly movement: string;
  readonly part: (typeof parts)[number];
}

function partField(view: StrengthView, { movement, part }: Part): TemplateResult {
  const { words, strength, desk } = view;
  const told = strength.wishes.lifted.find((each) => each.movement === movement);
  const held = desk.held.get(idOf(movement, part));
  return amountField(view, {
    id: idOf(movement, part),
    label: words.say(`strength.lifted.${part}`),
    value: told?.[part] ?? (held === undefined ? null : Number(held)),
    range: part === 'kilograms' ? strengthLimits.kilograms : repetitionRange(view),
    set: (number) => withPart(view, { movement, part, number }),
  });
}

const repetitionRange = ({ method }: StrengthView) => ({
  least: 1,
  most: strengthGround(method).rules.maximum.most_repetitions,
  isWhole: true,
});

const idOf = (movement: string, part: string): string => `strength-${movement}-${part}`;

interface Given extends Part {
  readonly number: number | null;
}

/** A set needs both its numbers: one alone is held until the other is there, and one taken out takes out the set. */
function withPart({ strength, desk }: StrengthView, { movement, part, number }: Given): StrengthRequest {
  const told = strength.wishes.lifted.find((each) => each.movement === movement);
  const others = strength.wishes.lifted.filter((each) => each !== told);
  const other = part === 'kilograms' ? 'repetitions' : 'kilograms';
  const held = desk.held.get(idOf(movement, other));
  const second = told?.[other] ?? (held === undefined ? null : Number(held));
  if (number !== null && second !== null)
    return {
      ...desk.request,
      lifted: [...others, { movement, kilograms: 0, repetitions: 0, [part]: number, [other]: second }],
    };
  desk.hold(idOf(movement, part), number === null ? null : String(number));
  if (told) desk.hold(idOf(movement, other), String(told[other]));
  return { ...desk.request, lifted: others };
}

function ageField(view: StrengthView): TemplateResult {
  const { words, strength, desk } = view;
  return amountField(view, {
    id: 'strength-age',
    label: words.say('strength.age'),
    value: strength.wishes.age,
    set: (age): StrengthRequest => ({ ...desk.request, age }),
  });
}
