/** Keys that are no characters, by their names in the standard (https://www.w3.org/TR/webdriver2/#keyboard-actions). */
const keyCodes = {
  Alt: '\uE00A',
  ArrowDown: '\uE015',
  ArrowLeft: '\uE012',
  ArrowRight: '\uE014',
  ArrowUp: '\uE013',
  Backspace: '\uE003',
  Control: '\uE009',
  Delete: '\uE017',
  End: '\uE010',
  Enter: '\uE007',
  Escape: '\uE00C',
  F2: '\uE032',
  Home: '\uE011',
  Meta: '\uE03D',
  PageDown: '\uE00F',
  PageUp: '\uE00E',
  Shift: '\uE008',
  Space: ' ',
  Tab: '\uE004',
};
const buttonNumbers = { left: 0, middle: 1, right: 2 };

const keyAction = (type) => (key) => ({ type, value: keyCodes[key] ?? key });
const [downOf, upOf] = [keyAction('keyDown'), keyAction('keyUp')];
const stroke = (key) => [downOf(key), upOf(key)];
const moveTo = (x, y) => ({ type: 'pointerMove', duration: 0, x, y });
const buttonAction =
  (type) =>
  ({ button = 'left' } = {}) => ({ type, button: buttonNumbers[button] });
const [pressOf, releaseOf] = [buttonAction('pointerDown'), buttonAction('pointerUp')];

function createKeyboard(command) {
  const act = (actions) => command('POST', '/actions', { actions: [{ type: 'key', id: 'keys', actions }] });
  return {
    type: (text) => act([...text].flatMap(stroke)),
    press: (key) => act(stroke(key)),
    down: (key) => act([downOf(key)]),
    up: (key) => act([upOf(key)]),
  };
}

function createMouse(command) {
  const parameters = { pointerType: 'mouse' };
  const act = (...actions) =>
    command('POST', '/actions', { actions: [{ type: 'pointer', id: 'mouse', parameters, actions }] });
  return {
    move: (x, y) => act(moveTo(x, y)),
    click: (x, y, options) => act(moveTo(x, y), pressOf(options), releaseOf(options)),
    down: (options) => act(pressOf(options)),
    up: (options) => act(releaseOf(options)),
  };
}

const frameSized = 'const frame = document.querySelector("iframe"); [frame.width, frame.height] = arguments';
const frameShown = 'const frame = document.querySelector("iframe"); frame.src = arguments[0]; frame.focus()';

/**
 * A page in WebKit, in the shape that the runner's commands know from Playwright. The page is a frame in the corner of the
 * window: a window is never narrower than the bar over it, a frame is as narrow as a telephone.
 */
export function createWebKitPage(command) {
  const runAround = (script, ...args) => command('POST', '/execute/sync', { script, args });
  return {
    command,
    keyboard: createKeyboard(command),
    mouse: createMouse(command),
    screenshot: async () => Buffer.from(await command('GET', '/screenshot'), 'base64'),
    setViewportSize: ({ width, height }) => runAround(frameSized, width, height),
    async goto(url) {
      await command('POST', '/url', { url: new URL('/tests/tools/framed.html', url).href });
      await runAround(frameShown, url);
    },
    leave: () => command('POST', '/url', { url: 'about:blank' }),
    /** Lets something be done with commands in the frame itself. */
    async inside(act) {
      await command('POST', '/frame', { id: 0 });
      try {
        return await act();
      } finally {
        await command('POST', '/frame', { id: null });
      }
    },
  };
}
