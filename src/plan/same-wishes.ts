/** True where two requests wish the same, in whichever order they say it; what is undefined is not said. */
export function isSameWishes(one: object, other: object): boolean {
  return inOrder(one) === inOrder(other);
}

function inOrder(wishes: object): string {
  const entries = Object.entries(wishes).filter(([, wish]) => wish !== undefined);
  return JSON.stringify(entries.sort(([one], [other]) => (one < other ? -1 : 1)));
}
