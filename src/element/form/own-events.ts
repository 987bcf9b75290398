import type { LitElement } from 'lit';

/**
 * Fires `input` and `change` as the browser's own fields do, for whoever listens to all fields of a form: `input` with every
 * act, `change` once nothing moves any more. Those of the controls inside stay inside.
 */
export function fireAsField(host: LitElement): void {
  const { renderRoot } = host;
  let isMoving = false;
  let isOwed = false;
  const commit = (): void => {
    isOwed = isMoving;
    if (!isMoving) host.dispatchEvent(new Event('change', { bubbles: true }));
  };
  const settle = (): void => {
    isMoving = false;
    // After whoever acts on the same event: theirs is the change then.
    queueMicrotask(() => {
      if (isOwed) commit();
    });
  };
  renderRoot.addEventListener('input', () => (isMoving = true), { capture: true });
  renderRoot.addEventListener('change', settle, { capture: true });
  host.addEventListener('plan-change', () => {
    host.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
    commit();
  });
}
