import type { Fault } from './fault.js';
import { faultSentence } from './fault-sentence.js';
import type { Language } from './parameters.js';
import { texts } from './texts.js';

/** A box that says what is wrong with the address of the page. */
export function faultBox(language: Language, faults: readonly Fault[]): HTMLElement {
  const box = document.createElement('section');
  box.className = 'faults';
  box.setAttribute('role', 'alert');
  const heading = document.createElement('h2');
  heading.textContent = texts[language].heading;
  const list = document.createElement('ul');
  list.append(...faults.map((fault) => line(faultSentence(language, fault))));
  box.append(heading, list);
  return box;
}

function line(text: string): HTMLElement {
  const item = document.createElement('li');
  item.textContent = text;
  return item;
}
