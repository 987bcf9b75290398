// Describes the tag for editors and catalogues. The analyzer reads src; what is published lies in dist.
const published = { 'src/element/weekwright-planner.ts': 'dist/index.js', 'src/define.ts': 'dist/define.js' };
const publishedPath = (_, source) => JSON.stringify(published[`${source}.ts`]);

export default {
  globs: Object.keys(published),
  outdir: 'dist',
  litelement: true,
  packagejson: false,
  plugins: [
    {
      name: 'published-paths',
      packageLinkPhase({ customElementsManifest }) {
        const text = JSON.stringify(customElementsManifest.modules).replace(
          /"\/?(src\/[\w/-]+)\.[jt]s"/g,
          publishedPath,
        );
        customElementsManifest.modules = JSON.parse(text);
      },
    },
  ],
};
