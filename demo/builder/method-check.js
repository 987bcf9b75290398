/**
 * Has a planner that nobody sees read a method, and gives what it says of it.
 * @param {HTMLElement} place hidden, for the planner
 * @param {string} text
 * @returns {Promise<readonly string[]>} sentences
 */
export async function checkMethod(place, text) {
  const planner = document.createElement('weekwright-planner');
  planner.append(methodChild(text));
  place.replaceChildren(planner);
  await planner.updateComplete;
  const { problems, plan } = planner;
  if (problems.length === 0) return [`The method can be used: ${plan?.method.name ?? plan?.method.id}.`];
  const told = planner.shadowRoot?.querySelectorAll('[part="problems"] li') ?? [];
  return Array.from(told, (line) => line.textContent.trim());
}

/** A method as the planner takes it from a page. @param {string} text */
export function methodChild(text) {
  const child = document.createElement('script');
  child.type = 'application/json';
  child.slot = 'method';
  child.textContent = text;
  return child;
}
