import { html, nothing, type TemplateResult } from 'lit';

/**
 * A button that does something to the week; it stays in its place where it cannot be pressed. Where several have the same
 * text, `name` tells a listener what each is about.
 */
export function actButton(text: string, act: (() => void) | null, name?: string): TemplateResult {
  return html`<button
    type="button"
    class="act"
    aria-label=${name ?? nothing}
    aria-disabled=${act ? 'false' : 'true'}
    @click=${() => {
      act?.();
    }}
  >
    ${text}
  </button>`;
}
