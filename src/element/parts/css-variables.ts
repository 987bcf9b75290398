import { noChange } from 'lit';
import { Directive, directive, PartType, type ElementPart, type PartInfo } from 'lit/directive.js';

/**
 * Sets custom properties of the element it stands on. lit's own `styleMap` writes a style attribute on first render,
 * which a strict content policy blocks; the style object is not blocked.
 */
class CssVariables extends Directive {
  constructor(part: PartInfo) {
    super(part);
    if (part.type !== PartType.ELEMENT) throw new Error('cssVariables stands on an element');
  }

  render(_variables: Readonly<Record<`--${string}`, string>>): typeof noChange {
    return noChange;
  }

  override update({ element }: ElementPart, [variables]: Parameters<this['render']>): typeof noChange {
    if (element instanceof HTMLElement)
      for (const [name, value] of Object.entries(variables)) element.style.setProperty(name, value);
    return noChange;
  }
}

/** `<div ${cssVariables({ '--fill': '40%' })}>` */
export const cssVariables = directive(CssVariables);
