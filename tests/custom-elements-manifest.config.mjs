import { readFileSync } from 'node:fs';

// Describes the tag for editors and catalogues. The analyzer reads src; what is published lies in dist.
const published = { 'src/element/weekwright-planner.ts': 'dist/index.js', 'src/define.ts': 'dist/define.js' };
// What the tag inherits from is no class for others: its members are the tag's own.
const inner = 'src/element/planner-face.ts';
const publishedPath = (_, source) => JSON.stringify(published[`${source}.ts`]);

/** What no page can use, and the event once more, without its name, where it is made. */
function leaveOut(declaration) {
  const isForPages = (member) => (member.privacy ?? 'public') === 'public' && !member.static;
  declaration.members = declaration.members?.filter(isForPages);
  declaration.events = declaration.events?.filter(({ name }) => name);
}

/** What a custom property is where a page leaves it alone stands in the styles, and nowhere else. */
function addDefaults({ cssProperties = [] }) {
  const styles = readFileSync('src/element/base.styles.ts', 'utf8');
  for (const property of cssProperties) {
    const [, value] = styles.match(RegExp(`var\\(${property.name}, ((?:[^()]|\\([^()]*\\))+)\\)`)) ?? [];
    if (!value) throw new Error(`the styles have no default of ${property.name}`);
    property.default = value;
  }
}

export default {
  globs: [...Object.keys(published), inner],
  outdir: 'dist',
  litelement: true,
  packagejson: false,
  plugins: [
    {
      name: 'published-paths',
      packageLinkPhase({ customElementsManifest }) {
        const modules = customElementsManifest.modules.filter(({ path }) => path !== inner);
        const ownMembers = (key, value) => (key === 'inheritedFrom' || key === 'superclass' ? undefined : value);
        const text = JSON.stringify(modules, ownMembers).replace(/"\/?(src\/[\w/-]+)\.[jt]s"/g, publishedPath);
        customElementsManifest.modules = JSON.parse(text);
        const declarations = customElementsManifest.modules.flatMap((module) => module.declarations);
        declarations.forEach(leaveOut);
        declarations.forEach(addDefaults);
      },
    },
  ],
};
