import type { Frame } from 'puppeteer-core';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import {
  fitted,
  frameAt,
  frameOn,
  heightInside,
  heightOf,
  insideOf,
  loadFrameScript,
  postFrom,
  pressWhy,
  useOtherSite,
} from './framing.js';
import { useBrowser, type OpenPage } from './web.js';

const web = useBrowser();
const other = useOtherSite();
let open: OpenPage;

beforeEach(async () => {
  open = await web.open('/demo/index.html');
});
afterEach(() => open.close());

/** 400 less the edges that a browser gives to a frame. */
const unfitted = 396;

const pause = (milliseconds: number) => new Promise((resolve) => setTimeout(resolve, milliseconds));

describe('a frame on a page of another origin', () => {
  test('grows and shrinks with what is in it', async () => {
    await loadFrameScript(open);
    await frameOn(open, other.origin(), [{ query: '?hours=4&phase=build' }]);
    const closed = await fitted(open.page);
    const inside = await insideOf(open.page);
    await pressWhy(inside);
    const opened = await fitted(open.page);
    await pressWhy(inside);
    expect(opened).toBeGreaterThan(closed + 50);
    expect(await fitted(open.page)).toBe(closed);
    expect(await inside.evaluate(() => document.documentElement.scrollHeight <= innerHeight)).toBe(true);
  });

  test('grows where the page around becomes narrow, and shrinks again', async () => {
    await loadFrameScript(open);
    await frameOn(open, other.origin(), [{}]);
    const wide = await fitted(open.page);
    await open.page.setViewport({ width: 360, height: 800 });
    await pause(200);
    expect(await fitted(open.page)).toBeGreaterThan(wide + 200);
    await open.page.setViewport({ width: 1280, height: 800 });
    await pause(200);
    expect(await fitted(open.page)).toBe(wide);
  });

  test('gets few heights, and none once it stands', async () => {
    await loadFrameScript(open);
    await open.page.evaluate(() => {
      Object.assign(window, { heights: [] });
      addEventListener('message', ({ data }: MessageEvent<{ height: number }>) => {
        (Reflect.get(window, 'heights') as number[]).push(data.height);
      });
    });
    await frameOn(open, other.origin(), [{}]);
    const height = await fitted(open.page);
    await pause(2500);
    const heights = await open.page.evaluate(() => Reflect.get(window, 'heights') as number[]);
    expect(heights.at(-1)).toBe(height);
    expect(heights.length).toBeLessThan(20);
    expect(new Set(heights.slice(-3))).toEqual(new Set([height]));
  });

  test('fits also where the script comes after it, or twice', async () => {
    await frameOn(open, other.origin(), [{}]);
    await insideOf(open.page);
    await pause(300);
    expect(await heightOf(open.page)).toBe(unfitted);
    await loadFrameScript(open);
    await loadFrameScript(open);
    expect(await fitted(open.page)).toBeGreaterThan(unfitted);
    expect(open.complaints).toEqual([]);
  });

  test('keeps its height and scrolls where the page around has no script', async () => {
    await frameOn(open, other.origin(), [{}]);
    const inside = await insideOf(open.page);
    expect(await heightInside(inside)).toBeGreaterThan(unfitted);
    await inside.evaluate(() => scrollTo(0, 200));
    expect(await inside.evaluate(() => scrollY)).toBe(200);
    expect(await heightOf(open.page)).toBe(unfitted);
  });

  test('is one of two, each as high as its own planner', async () => {
    await loadFrameScript(open);
    await frameOn(open, other.origin(), [{}, { query: '?panels=split+week' }]);
    const [first, second] = [await fitted(open.page, 0), await fitted(open.page, 1)];
    expect(second).toBeGreaterThan(first + 100);
    expect(await heightOf(open.page, 0)).toBe(first);
  });
});

describe('a sandboxed frame', () => {
  test.each(['allow-scripts', 'allow-scripts allow-same-origin', 'allow-scripts allow-popups allow-downloads'])(
    'of %j fits, and its planner works',
    async (sandbox) => {
      await loadFrameScript(open);
      await frameOn(open, other.origin(), [{ query: '?hours=7&phase=build&lang=de', sandbox }]);
      const inside = await insideOf(open.page);
      const closed = await fitted(open.page);
      await pressWhy(inside);
      expect(await fitted(open.page)).toBeGreaterThan(closed + 50);
      const plan = await inside.$eval('weekwright-planner', (planner) => planner.plan);
      expect(plan?.inputs.hours).toBe(7);
      expect(await inside.evaluate(() => Reflect.get(globalThis, 'policyViolations') as unknown)).toEqual([]);
      expect(open.complaints).toEqual([]);
    },
  );

  test('of no scripts says what is missing', async () => {
    await frameOn(open, other.origin(), [{ sandbox: '' }]);
    const frame = await (await open.page.waitForSelector('iframe'))?.contentFrame();
    const told = await frame?.$eval('noscript', (each) => each.textContent);
    expect(told).toMatch(/sandbox="allow-scripts"/);
  });
});

describe('the script around takes', () => {
  let inside: Frame;

  // A page that posts nothing by itself stands in the frame, and every height that the frame gets is recorded.
  beforeEach(async () => {
    await loadFrameScript(open);
    await frameOn(open, other.origin(), [{ page: '/demo/index.html' }]);
    inside = await frameAt(open.page);
    await inside.waitForFunction(() => document.querySelector('h1'), { polling: 50 });
    await open.page.$eval('iframe', (frame) => {
      const heights: string[] = [];
      Object.assign(window, { heights });
      new MutationObserver(() => heights.push(frame.style.height)).observe(frame, { attributeFilter: ['style'] });
    });
  });

  /** The heights got by now; a last good message shows that those before it have come too. */
  const recorded = async () => {
    await postFrom(inside, { type: 'weekwright-height', height: 777 });
    await open.page.waitForFunction(() => document.querySelector('iframe')?.style.height === '781px', { polling: 20 });
    return open.page.evaluate(() => Reflect.get(window, 'heights') as string[]);
  };

  test.each([
    ['another type', { type: 'height', height: 900 }],
    ['no type', { height: 900 }],
    ['no height', { type: 'weekwright-height' }],
    ['not a number', { type: 'weekwright-height', height: NaN }],
    ['no end', { type: 'weekwright-height', height: Infinity }],
    ['a text', { type: 'weekwright-height', height: '900' }],
    ['a list', { type: 'weekwright-height', height: [900] }],
    ['a bare text', 'weekwright-height'],
    ['nothing', null],
  ])('no message with %s', async (_, message) => {
    await postFrom(inside, message);
    expect(await recorded()).toEqual(['781px']);
  });

  test.each([
    [-5, '154px'],
    [0, '154px'],
    [200.2, '205px'],
    [1e9, '20004px'],
  ])('%d as %s, edges included', async (height, expected) => {
    await postFrom(inside, { type: 'weekwright-height', height });
    expect(await recorded()).toEqual([expected, '781px']);
  });

  test('nothing from a window that is no frame of the page', async () => {
    await open.page.evaluate(() => postMessage({ type: 'weekwright-height', height: 900 }, '*'));
    expect(await recorded()).toEqual(['781px']);
  });

  test('nothing for a frame from another frame', async () => {
    await open.page.evaluate(() => {
      const frame = document.body.appendChild(document.createElement('iframe'));
      const script = document.createElement('script');
      script.text = "parent.postMessage({ type: 'weekwright-height', height: 900 }, '*')";
      frame.contentDocument?.body.append(script);
    });
    expect(await recorded()).toEqual(['781px']);
    expect(await open.page.$$eval('iframe', ([, second]) => second?.style.height)).toBe('');
  });

  test('nothing from a frame that has gone on to another origin', async () => {
    const { origin } = new URL(open.page.url());
    await Promise.all([inside.waitForNavigation(), inside.evaluate((to) => location.assign(to), `${origin}/demo/`)]);
    inside = await frameAt(open.page);
    await postFrom(inside, { type: 'weekwright-height', height: 900 });
    await pause(300);
    expect(await open.page.evaluate(() => Reflect.get(window, 'heights') as string[])).toEqual([]);
  });

  test.each([
    ['allow-scripts', 'null'],
    ['allow-scripts allow-same-origin', 'its own'],
  ])('heights of a frame in the sandbox %j, whose origin is %s', async (sandbox) => {
    await frameOn(open, other.origin(), [{ page: '/demo/index.html', sandbox }]);
    const boxed = await frameAt(open.page);
    await boxed.waitForFunction(() => document.querySelector('h1'), { polling: 50 });
    await postFrom(boxed, { type: 'weekwright-height', height: 777 });
    await open.page.waitForFunction(() => document.querySelector('iframe')?.style.height === '781px', { polling: 20 });
  });

  test('nothing from a frame that is without an origin, yet in no sandbox', async () => {
    await open.page.evaluate(() => {
      const text = "<script>parent.postMessage({ type: 'weekwright-height', height: 900 }, '*')</script>";
      document.body.append(Object.assign(document.createElement('iframe'), { src: `data:text/html,${text}` }));
    });
    await pause(500);
    expect(await recorded()).toEqual(['781px']);
    expect(await open.page.$$eval('iframe', ([, second]) => second?.style.height)).toBe('');
  });
});

describe('the origin that the address names', () => {
  /** Types and hours of the messages that the page around has got. */
  const listen = () =>
    open.page.evaluate(() => {
      const got: unknown[] = [];
      Object.assign(window, { got });
      addEventListener('message', ({ data }: MessageEvent<{ type: string; plan?: { inputs: { hours: number } } }>) => {
        if (data.type !== 'weekwright-height') got.push([data.type, data.plan?.inputs.hours]);
      });
    });
  const heard = () => open.page.evaluate(() => Reflect.get(window, 'got') as unknown[]);
  const press = async () => {
    const inside = await insideOf(open.page);
    await inside.$eval('weekwright-planner', (planner) => planner.updateComplete);
    const slider = await inside.$('weekwright-planner >>> input[type="range"][aria-labelledby="hours-label"]');
    await slider?.focus();
    await slider?.press('ArrowRight');
    await pause(300);
  };

  test('gets the plan, and each that follows', async () => {
    await listen();
    const { origin } = new URL(open.page.url());
    await frameOn(open, other.origin(), [{ query: `?hours=4&parent=${origin}` }]);
    await press();
    const messages = await heard();
    expect(messages[0]).toEqual(['weekwright-plan', 4]);
    expect(messages).toHaveLength(2);
    expect(messages[1]).toEqual(['weekwright-plan', 4.25]);
  });

  test('gets nothing where it is not that of the page around', async () => {
    await listen();
    await frameOn(open, other.origin(), [{ query: '?hours=4&parent=https://club.example' }]);
    await press();
    expect(await heard()).toEqual([]);
  });

  test('gets nothing where none is named', async () => {
    await listen();
    await frameOn(open, other.origin(), [{ query: '?hours=4' }]);
    await press();
    expect(await heard()).toEqual([]);
  });
});

describe('the page to frame', () => {
  const show = async (query: string) => {
    await open.page.goto(new URL(`/embed.html${query}`, open.page.url()).href, { waitUntil: 'networkidle0' });
    return open.page.mainFrame();
  };
  const told = () => open.page.$$eval('.faults li', (all) => all.map((each) => each.textContent));

  test('passes on every attribute of the planner but those of a field of a form', async () => {
    await show('');
    const observed = await open.page.evaluate(() => {
      const tag = customElements.get('weekwright-planner');
      // The language is that of the whole page.
      const others = ['name', 'disabled', 'required', 'value', 'lang'];
      return (Reflect.get(tag ?? {}, 'observedAttributes') as string[]).filter((name) => !others.includes(name));
    });
    const query = observed.map((name) => `${name}=x`);
    await show(`?${query.join('&')}&lang=de`);
    const set = await open.page.$eval('weekwright-planner', (planner) => planner.getAttributeNames());
    expect(set.sort()).toEqual(observed.sort());
    expect(set.length).toBeGreaterThan(10);
    expect(await told()).toEqual([]);
    expect(await open.page.evaluate(() => document.documentElement.lang)).toBe('de');
  });

  test('has the colours, the rounding and the scheme of its address', async () => {
    await show('?accent=%237a2464&ground=%23fdf8ee&radius=3px&scheme=dark');
    const look = await open.page.$eval('weekwright-planner', (planner) => {
      const style = getComputedStyle(planner.shadowRoot?.querySelector('.planner') ?? planner);
      return [style.backgroundColor, style.accentColor, style.borderTopLeftRadius, style.colorScheme];
    });
    expect(look).toEqual(['rgb(253, 248, 238)', 'rgb(122, 36, 100)', '3px', 'dark']);
  });

  test('tells what it cannot use, in the language of the planner', async () => {
    await show('?hour=4&ground=greenish&hours=7&hours=8&scheme=dim&radius=round&parent=club.example');
    expect(await told()).toEqual([
      expect.stringMatching(/^hour is not a known field here\. Allowed: label, panels, .*parent\.$/),
      'ground is "greenish"; allowed: a CSS colour, such as #20618f.',
      'hours is "8", which is taken already; each name stands once.',
      'scheme is "dim"; allowed: light, dark.',
      'radius is "round"; allowed: a CSS length, such as 8px.',
      'parent is "club.example"; allowed: an origin, such as https://club.example.',
    ]);
    expect(await open.page.$eval('weekwright-planner', ({ plan }) => plan?.inputs.hours)).toBe(7);
    await show('?lang=de&ground=greenish');
    expect(await told()).toEqual(['ground ist "greenish"; erlaubt: eine CSS-Farbe wie #20618f.']);
  });

  test('leaves faulty attributes to the planner, which tells them', async () => {
    await show('?phase=summer&method-src=https://elsewhere.example/method.json');
    const lines = await open.page.$$eval('weekwright-planner >>> .problems li', (all) =>
      all.map((each) => each.textContent),
    );
    expect(lines.join('\n')).toMatch(/https:\/\/elsewhere\.example\/method\.json.*allowed: addresses of/);
    expect(lines.join('\n')).toMatch(/summer/);
    expect(await told()).toEqual([]);
    expect(open.requests.filter((url) => url.startsWith('https:'))).toEqual([]);
  });

  test('refuses what its policy says, and keeps to it in all panels', async () => {
    const panels = 'split week running strength checks season record handout sheet basis';
    await show(
      `?panels=${panels.replaceAll(' ', '+')}&event-date=2027-05-02&hours=7&method-src=/demo/club-method.json`,
    );
    await open.page.$eval('weekwright-planner', (planner) => planner.updateComplete);
    const inside = open.page.mainFrame();
    await pressWhy(inside);
    expect(await open.violations()).toEqual([]);
    expect(open.complaints).toEqual([]);
    const refused = await open.page.evaluate(() => {
      const probe = document.body.appendChild(document.createElement('p'));
      probe.setAttribute('style', 'color: red');
      try {
        probe.innerHTML = '<b>x</b>';
      } catch {
        return `${probe.style.color}refused`;
      }
      return 'taken';
    });
    expect(refused).toBe('refused');
  });

  test('asks for nothing once it is there, and only for what is its own', async () => {
    await frameOn(open, other.origin(), [{ query: '?hours=4' }]);
    const inside = await insideOf(open.page);
    await pause(500);
    const before = open.requests.length;
    await inside.$eval('weekwright-planner', (planner) => Object.assign(planner, { hours: 5 }));
    await pause(1000);
    expect(open.requests.slice(before)).toEqual([]);
    const own = open.requests.filter((url) => url.startsWith(other.origin()));
    expect(own.length).toBeGreaterThan(2);
    for (const url of own) expect(new URL(url).pathname).toMatch(/^\/(embed\.html|weekwright[\w.-]*\.(js|css))$/);
  });

  test('listens to no message', async () => {
    const kinds: string[] = [];
    await open.page.exposeFunction('listened', (kind: string) => kinds.push(kind));
    await open.page.evaluateOnNewDocument(() => {
      const listen = window.addEventListener.bind(window);
      window.addEventListener = (...args: Parameters<typeof listen>) => {
        (Reflect.get(window, 'listened') as (kind: string) => void)(args[0]);
        listen(...args);
      };
    });
    await show('?panels=split+handout');
    expect(kinds).not.toContain('message');
    expect(await open.page.evaluate(() => window.onmessage)).toBeNull();
  });

  test('says so where the planner does not come', async () => {
    await open.page.setRequestInterception(true);
    open.page.on('request', (request) => {
      void (request.url().endsWith('/weekwright.js') ? request.abort() : request.continue());
    });
    await show('?lang=es');
    const text = await open.page.$eval('[role="alert"]', (each) => each.textContent);
    expect(text).toMatch(/^No se ha podido cargar el planificador/);
  });

  test.each(['light', 'dark'] as const)('axe finds nothing, %s', async (scheme) => {
    await show(`?scheme=${scheme}&hour=3&lang=de`);
    expect(await open.axe()).toEqual([]);
  });
});
