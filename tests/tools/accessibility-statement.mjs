// The accessibility statement as a page for people, from shared/accessibility/criteria.json.

/**
 * @typedef {{ id: string, name: string, level: string, status: string, how: string, checks: readonly string[],
 *   byHand?: string }} Criterion
 * @typedef {{ about: string, criteria: readonly Criterion[] }} Criteria
 */

const principles = ['Perceivable', 'Operable', 'Understandable', 'Robust'];
const statuses = ['met', 'partly', 'not applicable'];

const introduction = `# Accessibility of Weekwright

How the tag \`<weekwright-planner>\` and the page to frame, \`embed.html\`, stand to Web Content Accessibility Guidelines (WCAG) 2.2, levels A and AA. A page around the planner has to see to itself: its title, its language, its own colours where it changes those of the planner.

This is our own judgement. Nobody else has assessed it, no screen reader and no real phone or other device was used, and no person who depends on such help has tried it. What assistive technology is given is tested by the accessibility trees of browsers and by axe-core, in browsers without a screen.

Whoever meets a barrier: please tell those who run the page that the planner is on. They know whom to ask, and can pass it on to us.

Written by \`npm run compile\` from \`criteria.json\` beside it. Ids, names and levels are W3C's.`;

/** Tests are in no package: their paths are named, and link to nothing. */
const named = (path) => `\`${path}\``;

/** @param {Criterion} criterion */
const row = ({ id, name, level, status, how, checks, byHand }) =>
  `| ${id} | ${name} | ${level} | ${status} | ${how} | ${[...checks.map(named), byHand].filter(Boolean).join('; ')} |`;

/** @param {readonly Criterion[]} criteria */
function table(criteria) {
  const head = '| | Criterion | Level | Status | What the planner does | Tests, or what was read or looked at |';
  return [head, '| --- | --- | --- | --- | --- | --- |', ...criteria.map(row)].join('\n');
}

/** @param {readonly Criterion[]} criteria */
const counts = (criteria) =>
  statuses.map((status) => `${criteria.filter((each) => each.status === status).length} ${status}`).join(', ');

/**
 * The whole page, not yet formatted.
 * @param {Criteria} document
 */
export function statementOf({ criteria }) {
  const parts = principles.map((name, index) => {
    const ours = criteria.filter(({ id }) => id.startsWith(`${index + 1}.`));
    return `## ${index + 1}. ${name}\n\n${table(ours)}`;
  });
  return [introduction, `Of ${criteria.length} criteria: ${counts(criteria)}.`, ...parts].join('\n\n');
}
