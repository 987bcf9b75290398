import { html, type TemplateResult } from 'lit';

/** A button that does something to the week; it stays in its place where it cannot be pressed. */
export function actButton(text: string, act: (() => void) | null): TemplateResult {
  return html`<button
    type="button"
    class="act"
    aria-disabled=${act ? 'false' : 'true'}
    @click=${() => {
      act?.();
    }}
  >
    ${text}
  </button>`;
}
