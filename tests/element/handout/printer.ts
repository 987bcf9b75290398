// A printer that prints nothing: it takes down what a frame would print, and when.
import { waitUntil } from '@open-wc/testing';
import { collapsed } from '../text.js';

/** A sheet as it goes to the printer. */
export interface Printed {
  readonly frame: HTMLIFrameElement;
  readonly document: Document;
  /** The rules that make the pages: "@page { … }". */
  readonly pageRule: string;
  readonly text: string;
}

type View = NonNullable<HTMLIFrameElement['contentWindow']>;

/** What is printed while something is done. The frames stand until `finish` is called. */
export async function printing(act: () => Promise<unknown>): Promise<Printed[]> {
  const printed: Printed[] = [];
  await withPrinter(
    (frame) => printed.push(taken(frame)),
    async () => {
      await act();
      await waitUntil(() => printed.length > 0, 'something is printed'); // frames load later in some browsers
    },
  );
  return printed;
}

/** Does something while frames cannot print: what they would print goes to `take`. */
export async function withPrinter(
  take: (frame: HTMLIFrameElement) => void,
  act: () => Promise<unknown>,
): Promise<void> {
  const { prototype } = HTMLIFrameElement;
  const own = Object.getOwnPropertyDescriptor(prototype, 'contentWindow');
  if (!own?.get) throw new Error('frames have no window');
  Object.defineProperty(prototype, 'contentWindow', {
    ...own,
    get(this: HTMLIFrameElement): View | null {
      const view = own.get?.call(this) as View | null;
      if (view) view.print = () => take(this);
      return view;
    },
  });
  try {
    await act();
  } finally {
    Object.defineProperty(prototype, 'contentWindow', own);
  }
}

function taken(frame: HTMLIFrameElement): Printed {
  const { contentDocument } = frame;
  if (!contentDocument) throw new Error('the frame has no document');
  const rules = contentDocument.adoptedStyleSheets.flatMap((sheet) => [...sheet.cssRules]);
  const pages = rules.filter((rule) => rule.constructor.name === 'CSSPageRule');
  return {
    frame,
    document: contentDocument,
    pageRule: pages.map(({ cssText }) => cssText).join(),
    text: collapsed(contentDocument.body),
  };
}

/** The printer is done. */
export function finish({ frame }: Printed): void {
  frame.contentWindow?.dispatchEvent(new Event('afterprint'));
}

/** Printed pages in CSS pixels: their height, and how wide what is in them gets. */
export const sizes = ({ document: { body } }: Printed): { readonly height: number; readonly width: number }[] =>
  [...body.querySelectorAll<HTMLElement>('.page')].map((page) => ({
    height: page.getBoundingClientRect().height,
    width: Math.max(page.scrollWidth, ...[...page.querySelectorAll('*')].map((each) => reach(page, each))),
  }));

const reach = (page: Element, each: Element): number =>
  each.getBoundingClientRect().right - page.getBoundingClientRect().left;

/** Room on a sheet within the margins that the rule of its pages says, in CSS pixels; millimetres come in. */
export function roomOf({ pageRule }: Printed): { readonly height: number; readonly width: number } {
  const numbers = (property: string): number[] =>
    [...(new RegExp(`${property}: ([^;}]*)`).exec(pageRule)?.[1] ?? '').matchAll(/([\d.]+)mm/g)].map(([, value]) =>
      Number(value),
    );
  const [width = NaN, height = NaN] = numbers('size');
  const [block = NaN, inline = NaN] = numbers('margin');
  const pixels = 96 / 25.4;
  return { height: (height - 2 * block) * pixels, width: (width - 2 * inline) * pixels };
}
