import { html, nothing, type TemplateResult } from 'lit';
import type { LiftedSet, StrengthRequest } from '../../plan/strength/wishes.js';
import type { Problem } from '../../problem.js';
import { readNumber } from '../../words/read-number.js';
import { maximumLine } from '../../words/strength/maximum-line.js';
import { movementName } from '../../words/strength/movement-text.js';
import { textField } from '../fields/text-field.js';
import { notANumber } from '../inputs/not-a-number.js';
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
    ${parts.map((part) => partField(view, { movement, part, name: movementName(words, method, movement) }))}
    ${maximum ? html`<p class="quiet">${maximumLine(words, maximum)}</p>` : nothing}
  </li>`;
}

interface Part {
  readonly movement: string;
  readonly part: (typeof parts)[number];
  readonly name: string;
}

function partField(view: StrengthView, { movement, part, name }: Part): TemplateResult {
  const { words, strength, desk } = view;
  const told = strength.wishes.lifted.find((each) => each.movement === movement);
  const id = `strength-${movement}-${part}`;
  const label = words.say(`strength.lifted.${part}`, { movement: name });
  return textField(view, {
    id,
    label,
    keys: 'decimal',
    value: desk.held.get(id) ?? (told ? words.number(told[part]) : ''),
    set: (text): StrengthRequest | Problem => {
      const number = readNumber(text);
      if (number === null && text.trim() !== '') return notANumber(label, text);
      return withPart(view, { movement, part, number }, told);
    },
  });
}

interface Given {
  readonly movement: string;
  readonly part: (typeof parts)[number];
  readonly number: number | null;
}

/** A set needs both its numbers: one alone is held until the other is there, and one taken out takes out the set. */
function withPart(
  { strength, desk }: StrengthView,
  { movement, part, number }: Given,
  told?: LiftedSet,
): StrengthRequest {
  const others = strength.wishes.lifted.filter((each) => each.movement !== movement);
  const other = part === 'kilograms' ? 'repetitions' : 'kilograms';
  const idOf = (each: string): string => `strength-${movement}-${each}`;
  const held = desk.held.get(idOf(other));
  const second = told?.[other] ?? (held === undefined ? null : Number(held));
  if (number === null || second === null) {
    desk.hold(idOf(part), number === null ? null : String(number));
    if (told && number === null) desk.hold(idOf(other), String(told[other]));
    return { ...desk.request, lifted: others };
  }
  const values = { [part]: number, [other]: second };
  desk.hold(idOf(other), null);
  desk.hold(idOf(part), null);
  return {
    ...desk.request,
    lifted: [...others, { movement, kilograms: values['kilograms'] ?? 0, repetitions: values['repetitions'] ?? 0 }],
  };
}

function ageField(view: StrengthView): TemplateResult {
  const { words, strength, desk } = view;
  const label = words.say('strength.age');
  return textField(view, {
    id: 'strength-age',
    label,
    keys: 'numeric',
    value: strength.wishes.age === null ? '' : words.number(strength.wishes.age),
    set: (text): StrengthRequest | Problem => {
      const age = text.trim() === '' ? null : readNumber(text);
      return age === null && text.trim() !== '' ? notANumber(label, text) : { ...desk.request, age };
    },
  });
}
