import { html, nothing, type TemplateResult } from 'lit';

/**
 * A button that does something to the week; it stays in its place where it cannot be pressed. Where several have the same
 * text, `about` tells a listener what each is about.
 */
export function actButton(text: string, act: (() => void) | null, about?: string): TemplateResult {
  return html`<button
    type="button"
    class="act"
    aria-label=${about === undefined ? nothing : `${text}: ${about}`}
    aria-disabled=${act ? 'false' : 'true'}
    @click=${() => {
      act?.();
    }}
  >
    ${text}
  </button>`;
}
