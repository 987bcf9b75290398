import { noChange } from 'lit';
import { Directive, directive, type ElementPart } from 'lit/directive.js';

const isTyped = (target: unknown): target is HTMLInputElement | HTMLTextAreaElement =>
  target instanceof HTMLInputElement || target instanceof HTMLTextAreaElement;

/** Shows a text in a field, but not over what somebody is typing: that stays until it is entered. */
class TypedText extends Directive {
  render(_text: string): typeof noChange {
    return noChange;
  }

  override update({ element }: ElementPart, [text]: Parameters<this['render']>): typeof noChange {
    if (isTyped(element) && element.dataset['typing'] === undefined && element.value !== text) {
      element.value = text;
      // Whoever comes to a field by Tab types over what it says, also where that has changed since.
      if (element.matches(':focus')) element.select();
    }
    return noChange;
  }
}

/** `<input ${typedText('4')} @input=${beginTyping} @change=${endTyping} />` */
export const typedText = directive(TypedText);

/** A letter was typed. */
export function beginTyping({ currentTarget }: Event): void {
  if (isTyped(currentTarget)) currentTarget.dataset['typing'] = '';
}

/** What was typed is entered; gives the text. */
export function endTyping({ currentTarget }: Event): string | null {
  if (!isTyped(currentTarget)) return null;
  delete currentTarget.dataset['typing'];
  return currentTarget.value;
}
