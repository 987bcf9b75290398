import type { ElementHandle, Frame, Page } from 'puppeteer-core';
import { afterAll, beforeAll } from 'vitest';
import { serve } from '../tools/serve.mjs';
import type { OpenPage } from './web.js';

/** A frame on the page around: what stands in its address, and its sandbox where it has one. */
export interface Framed {
  readonly query?: string;
  /** Another page than that of the planner. */
  readonly page?: string;
  readonly sandbox?: string;
}

/** A second server: what it serves has another origin than the pages of the tests. */
export function useOtherSite(): { origin(): string } {
  let site: Awaited<ReturnType<typeof serve>> | undefined;
  beforeAll(async () => {
    site = await serve();
  });
  afterAll(() => site?.close());
  return { origin: () => site?.origin ?? '' };
}

/** Empties a page and gives it frames of the planner; each records the heights that it gets. */
export async function frameOn({ page }: OpenPage, origin: string, frames: readonly Framed[]): Promise<void> {
  await page.evaluate(
    (site, all) => {
      document.body.replaceChildren();
      for (const { page = '/embed.html', query = '', sandbox } of all) {
        const frame = document.createElement('iframe');
        if (sandbox !== undefined) frame.setAttribute('sandbox', sandbox);
        Object.assign(frame, { src: `${site}${page}${query}`, title: 'Planner', width: '100%', height: '400' });
        document.body.append(frame);
      }
    },
    origin,
    frames,
  );
}

/** Loads the script of the page around. */
export async function loadFrameScript({ page }: OpenPage): Promise<void> {
  await page.evaluate(
    () =>
      new Promise((resolve) => {
        const script = document.createElement('script');
        script.src = '/weekwright-frame.js';
        script.addEventListener('load', resolve);
        document.head.append(script);
      }),
  );
}

/** What is in a frame. */
export async function frameAt(page: Page, index = 0): Promise<Frame> {
  const handle: ElementHandle<HTMLIFrameElement> | undefined = (await page.$$('iframe'))[index];
  const frame = await handle?.contentFrame();
  if (!frame) throw new Error(`there is no frame ${String(index)}`);
  return frame;
}

/** What is in a frame, once its planner stands. */
export async function insideOf(page: Page, index = 0): Promise<Frame> {
  const frame = await frameAt(page, index);
  // By the clock: a frame out of sight draws nothing.
  await frame.waitForFunction(
    () => document.querySelector('weekwright-planner')?.shadowRoot?.querySelector('.answer'),
    {
      polling: 50,
    },
  );
  return frame;
}

/** How high what is in a frame is. */
export const heightInside = (frame: Frame): Promise<number> =>
  frame.evaluate(() => Math.ceil(document.documentElement.getBoundingClientRect().height));

/** How high a frame is, without its edges. */
export const heightOf = (page: Page, index = 0): Promise<number> =>
  page.evaluate((place) => document.querySelectorAll('iframe')[place]?.clientHeight ?? 0, index);

/** Waits until a frame is as high as what is in it, and gives that height. */
export async function fitted(page: Page, index = 0): Promise<number> {
  const inside = await insideOf(page, index);
  for (let tries = 0; tries < 100; tries += 1) {
    const [inner, outer] = [await heightInside(inside), await heightOf(page, index)];
    if (inner === outer) return outer;
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
  throw new Error(`frame ${String(index)} has ${String(await heightOf(page, index))} pixels, not those inside`);
}

/** Posts from within a frame to the page around; `height` may be a number that JSON does not have. */
export async function postFrom(frame: Frame, message: unknown): Promise<void> {
  const { height } = (message ?? {}) as { height?: unknown };
  const odd = typeof height === 'number' && !Number.isFinite(height) ? String(height) : null;
  await frame.evaluate(
    (data, name) => {
      parent.postMessage(name === null ? data : { ...(data as object), height: Number(name) }, '*');
    },
    message,
    odd,
  );
}

/** Presses what answers why the strength is what it is. */
export async function pressWhy(frame: Frame): Promise<void> {
  await frame.$eval('weekwright-planner', async (planner) => {
    planner.shadowRoot?.querySelector<HTMLElement>('.week .planned [data-quantity="strength_rounded"]')?.click();
    await planner.updateComplete;
  });
}
