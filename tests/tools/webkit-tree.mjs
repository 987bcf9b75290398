// WebKit's driver tells role and name of an element, one at a time: they are asked of everything that can have them.

const reference = 'element-6066-11e4-a52e-4f735466cecf';

/** What is seen and may have a role, in the order in which it stands, through open shadow roots. */
const candidates = `
  const selector = 'a, button, caption, fieldset, h1, h2, h3, h4, h5, h6, img, input, ol, section, select, summary, svg, table, textarea, ul, [role]';
  const all = (root) => [...root.querySelectorAll('*')].flatMap((each) => [each, ...(each.shadowRoot ? all(each.shadowRoot) : [])]);
  const seen = all(document).filter((each) => each.matches(selector) && each.checkVisibility() && !each.closest('[aria-hidden="true"]'));
  return seen.map((element) => ({ element, kind: element.type ?? element.localName }));
`;

/** What the driver has no role for, or the one of its looks, by its kind. */
const roleOf = { date: 'date', 'select-one': 'combobox', summary: 'summary' };

/** Roles and names on the page as a list in reading order. */
export function readWebKitNames({ command, inside }) {
  return inside(async () => {
    const nodes = [];
    for (const { element, kind } of await command('POST', '/execute/sync', { script: candidates, args: [] })) {
      const path = `/element/${element[reference]}`;
      const role = await command('GET', `${path}/computedrole`);
      nodes.push({ role: roleOf[kind] ?? role, name: await command('GET', `${path}/computedlabel`) });
    }
    return nodes;
  });
}
