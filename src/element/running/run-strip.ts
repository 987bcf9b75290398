import { html, type TemplateResult } from 'lit';
import type { ConcreteSession } from '../../plan/running/document.js';
import type { RunPart } from '../../training/running/run-session.js';
import { cssVariables } from '../parts/css-variables.js';

/** A run as beads on a string, each as long as its minutes: beads for what is hard. The sentence beside it says the same. */
export function runStrip({ category, parts }: Pick<ConcreteSession, 'category' | 'parts'>): TemplateResult {
  const isEasy = (kind: RunPart['kind']): boolean => kind !== 'work' || category === 'slow';
  return html`<div class="run-strip" aria-hidden="true">
    ${laidOut(parts).map(
      ({ kind, minutes }) =>
        html`<span class=${isEasy(kind) ? 'easy' : 'work'} ${cssVariables({ '--minutes': String(minutes) })}></span>`,
    )}
  </div>`;
}

/** Bouts and the rests between them, one after the other. */
function laidOut(parts: readonly RunPart[]): readonly RunPart[] {
  const rest = parts.find(({ kind }) => kind === 'rest');
  return parts.flatMap((part) => {
    if (part.kind === 'rest') return [];
    return Array.from({ length: part.times }, (_, index) => (index > 0 && rest ? [rest, part] : [part])).flat();
  });
}
