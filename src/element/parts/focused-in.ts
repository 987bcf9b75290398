/** What has the focus in the planner that a place is in. */
export function focusedIn(place: HTMLElement): Element | null {
  const root = place.getRootNode();
  return root instanceof ShadowRoot ? root.activeElement : null;
}

/** Renders into a place; where what has the focus there goes with it, as a button that has done its work, a heading gets it. */
export function renderFocused(place: HTMLElement, heading: string, render: () => void): void {
  const focused = focusedIn(place);
  const isHere = place.contains(focused);
  render();
  if (isHere && !place.contains(focused)) place.querySelector<HTMLElement>(heading)?.focus({ preventScroll: true });
}
