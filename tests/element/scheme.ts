/** Has the tests of a block see a page in one scheme: its ground and its planners, as light-dark() follows them. */
export function inScheme(scheme: 'light' | 'dark'): void {
  before(() => {
    document.documentElement.style.colorScheme = scheme;
    document.body.style.background = 'Canvas';
  });

  after(() => {
    document.documentElement.style.removeProperty('color-scheme');
    document.body.style.removeProperty('background');
  });
}
