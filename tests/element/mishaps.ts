/** What goes wrong on the page while something is done. */
export async function mishaps(act: () => Promise<unknown>): Promise<string[]> {
  const heard: string[] = [];
  const note = (event: Event): number => heard.push(event.type);
  const types = ['error', 'unhandledrejection'] as const;
  for (const type of types) window.addEventListener(type, note);
  await act();
  for (const type of types) window.removeEventListener(type, note);
  return heard;
}
