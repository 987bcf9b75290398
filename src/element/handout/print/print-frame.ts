import { render, type TemplateResult } from 'lit';
import { categoryIds } from '../../../training/method/ids.js';
import { focusedIn } from '../../parts/focused-in.js';
import { fitPage } from './fit-pages.js';
import { pageRules, type Paper } from './papers.js';

/** What is printed. */
export interface Printing {
  /** Where the frame stands while it is printed: inside the planner, so that the page around it is not touched. */
  readonly place: HTMLElement;
  readonly content: TemplateResult;
  readonly styles: string;
  readonly paper: Paper;
  /** What a browser calls the file, where it prints into one. */
  readonly title: string;
  readonly language: string;
}

/**
 * Prints from a frame of its own, whose document has nothing but the sheet: neither the page around the planner nor its
 * styles are touched. Nothing is fetched, and no markup is read from text.
 *
 * @returns false where the page around a frame forbids printing, or the frame cannot be made.
 */
export async function printSheet(printing: Printing): Promise<boolean> {
  const focused = focusedIn(printing.place);
  const frame = await blankFrame(printing.place);
  const { contentDocument: inner, contentWindow: view } = frame;
  if (!inner || !view) {
    frame.remove();
    return false;
  }
  fill(inner, view, printing);
  const end = (): void => {
    const hadFocus = focusedIn(frame) === frame;
    frame.remove();
    if (hadFocus && focused instanceof HTMLElement) focused.focus({ preventScroll: true });
  };
  view.addEventListener('afterprint', end);
  view.focus();
  try {
    view.print();
    return true;
  } catch {
    end();
    return false;
  }
}

/** Browsers differ in when the first document of a frame is there to stay: all tell when it is loaded. */
async function blankFrame(place: HTMLElement): Promise<HTMLIFrameElement> {
  for (const old of place.querySelectorAll('.print-frame')) old.remove();
  const frame = document.createElement('iframe');
  frame.className = 'print-frame';
  frame.tabIndex = -1;
  frame.setAttribute('aria-hidden', 'true');
  const loaded = new Promise((resolve) => {
    frame.addEventListener('load', resolve, { once: true });
  });
  place.append(frame);
  await loaded;
  return frame;
}

type View = NonNullable<HTMLIFrameElement['contentWindow']>;

function fill(inner: Document, view: View, { place, content, styles, paper, title, language }: Printing): void {
  inner.title = title;
  inner.documentElement.lang = language;
  // A sheet belongs to the document that made it.
  const { CSSStyleSheet: Sheet } = view as View & typeof globalThis;
  const sheet = new Sheet();
  sheet.replaceSync(`${styles}${pageRules(paper)}`);
  inner.adoptedStyleSheets = [sheet];
  const look = getComputedStyle(place);
  inner.documentElement.dir = look.direction;
  inner.body.style.fontFamily = look.fontFamily;
  for (const id of categoryIds) inner.body.style.setProperty(`--${id}`, look.getPropertyValue(`--${id}`));
  render(content, inner.body);
  for (const page of inner.querySelectorAll<HTMLElement>('.page')) fitPage(page, paper);
}
