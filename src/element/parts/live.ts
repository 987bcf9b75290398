import { noChange } from 'lit';
import { Directive, directive, type PropertyPart } from 'lit/directive.js';

/** Holds a property of a field to what it should be, also where a person has changed it since it was last rendered. */
class Live extends Directive {
  render(_value: unknown): typeof noChange {
    return noChange;
  }

  override update({ element, name }: PropertyPart, [value]: Parameters<this['render']>): typeof noChange {
    if (Reflect.get(element, name) !== value) Reflect.set(element, name, value);
    return noChange;
  }
}

/** `<input .checked=${live(isOn)} />`; Lit's own knows every kind of binding, and is three times as large. */
export const live = directive(Live);
