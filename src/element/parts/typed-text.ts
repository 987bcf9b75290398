import { noChange } from 'lit';
import { Directive, directive, type ElementPart } from 'lit/directive.js';

/** Shows a text in a field, but not over what somebody is typing: that stays until it is entered. */
class TypedText extends Directive {
  render(_text: string): typeof noChange {
    return noChange;
  }

  override update({ element }: ElementPart, [text]: Parameters<this['render']>): typeof noChange {
    if (element instanceof HTMLInputElement && element.dataset['typing'] === undefined && element.value !== text)
      element.value = text;
    return noChange;
  }
}

/** `<input ${typedText('4')} @input=${beginTyping} @change=${endTyping} />` */
export const typedText = directive(TypedText);

/** A letter was typed. */
export function beginTyping({ currentTarget }: Event): void {
  if (currentTarget instanceof HTMLInputElement) currentTarget.dataset['typing'] = '';
}

/** What was typed is entered; gives the text. */
export function endTyping({ currentTarget }: Event): string | null {
  if (!(currentTarget instanceof HTMLInputElement)) return null;
  delete currentTarget.dataset['typing'];
  return currentTarget.value;
}
