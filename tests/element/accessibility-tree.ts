import { executeServerCommand } from '@web/test-runner-commands';

/** What a screen reader is given of one thing. */
export interface AccessibleNode {
  readonly role: string;
  readonly name: string;
  /** Of a slider that has words for its value, these; missing where the instrument `accessibleValues` is. */
  readonly value?: string;
  readonly description?: string;
}

/** Everything on the page that has one of these roles, in reading order. */
export async function accessibleNodes(roles: RegExp): Promise<AccessibleNode[]> {
  const nodes = await executeServerCommand<AccessibleNode[], undefined>('accessibility-tree');
  return nodes.filter(({ role }) => roles.test(role));
}

/** Everything on the page that a person can work with. */
export const accessibleControls = (): Promise<AccessibleNode[]> =>
  accessibleNodes(/^(?:button|checkbox|combobox|date|listbox|radio|slider|spinbutton|textbox)$/);

/** One line for each: "slider: Hours a week". */
export async function accessibleNames(roles: RegExp): Promise<string[]> {
  return (await accessibleNodes(roles)).map(({ role, name }) => `${role}: ${name}`);
}

/** One line for each, with what it is set to: "slider: Hours a week = 4 hours". */
export async function accessibleValues(roles: RegExp): Promise<string[]> {
  return (await accessibleNodes(roles)).map(({ role, name, value = '' }) => `${role}: ${name} = ${value}`);
}
