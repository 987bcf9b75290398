/** What of an element's look comes from styles that do not reach a sheet of paper. */
const paints = [
  'fill',
  'fill-opacity',
  'fill-rule',
  'stroke',
  'stroke-width',
  'stroke-linecap',
  'stroke-linejoin',
  'stroke-opacity',
  'opacity',
  'display',
  'font-family',
  'font-size',
  'font-weight',
  'text-anchor',
];

/** Fine enough for a logo two centimetres high. */
const dots = { most: 1200, forEachPixel: 4 };

/**
 * What a page has put into the planner's slot for its logo, for a sheet of paper: copies of its pictures, and its text, in
 * their order. Nothing is fetched: a picture is drawn from what the page has loaded already. What the page hides is left
 * out, unless it hides all of it: then it wants its logo on paper alone.
 *
 * @param whenLoaded is called once a picture that is still being fetched is there.
 */
export function logoPieces(host: HTMLElement, whenLoaded: () => void): readonly Element[] {
  const all = [...host.querySelectorAll<HTMLElement>(':scope > [slot="logo"]')];
  const shown = all.filter(isShown);
  return (shown.length > 0 ? shown : all).flatMap((each) => piecesOf(each, whenLoaded));
}

const isShown = (element: Element): boolean => getComputedStyle(element).display !== 'none';

function piecesOf(node: Node, whenLoaded: () => void): Element[] {
  if (node instanceof HTMLImageElement) return imagePieces(node, whenLoaded);
  if (node instanceof HTMLCanvasElement) return [drawn(node, node, node.getAttribute('aria-label') ?? '')];
  if (node instanceof SVGSVGElement) return [painted(node)];
  if (node instanceof Text) return textPieces(node.data.trim());
  if (node instanceof HTMLScriptElement || node instanceof HTMLStyleElement) return [];
  const inner = [...node.childNodes].filter((each) => !(each instanceof Element) || isShown(each));
  return inner.flatMap((each) => piecesOf(each, whenLoaded));
}

function textPieces(text: string): Element[] {
  if (text === '') return [];
  const name = document.createElement('b');
  name.textContent = text;
  return [name];
}

function imagePieces(image: HTMLImageElement, whenLoaded: () => void): Element[] {
  if (!image.complete) void image.decode().then(whenLoaded, () => undefined); // a broken picture stays away
  if (!image.complete || image.naturalWidth === 0) return [];
  return [drawn(image, { width: image.naturalWidth, height: image.naturalHeight }, image.alt)];
}

/** A picture as dots: one that came from elsewhere too can be drawn, and is not fetched again for another document. */
function drawn(
  source: HTMLImageElement | HTMLCanvasElement,
  { width, height }: { readonly width: number; readonly height: number },
  alt: string,
): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  canvas.width = Math.min(
    dots.most,
    Math.max(width, Math.round(source.getBoundingClientRect().width * dots.forEachPixel)),
  );
  canvas.height = Math.max(1, Math.round((canvas.width * height) / width));
  if (alt === '') canvas.ariaHidden = 'true';
  else Object.assign(canvas, { role: 'img', ariaLabel: alt });
  canvas.getContext('2d')?.drawImage(source, 0, 0, canvas.width, canvas.height);
  return canvas;
}

/** A drawing with the paints that it has on the page; what has the colour of the text there has that of the ink. */
function painted(drawing: SVGSVGElement): Element {
  const copy = drawing.cloneNode(true) as SVGSVGElement;
  const { width, height } = drawing;
  if (!copy.hasAttribute('viewBox')) copy.setAttribute('viewBox', `0 0 ${width.baseVal.value} ${height.baseVal.value}`);
  for (const name of ['class', 'style', 'width', 'height', 'slot']) copy.removeAttribute(name);
  const originals = [drawing, ...drawing.querySelectorAll<SVGElement>('*')];
  [copy, ...copy.querySelectorAll<SVGElement>('*')].forEach((each, index) => {
    const original = originals[index];
    if (original) paint(each, original);
  });
  copy.style.removeProperty('display');
  // Their rules would reach all of the planner; what they paint is on the copies by now.
  for (const each of copy.querySelectorAll('script, style')) each.remove();
  return copy;
}

function paint(copy: SVGElement, original: SVGElement): void {
  const look = getComputedStyle(original);
  for (const name of paints) {
    const value = look.getPropertyValue(name);
    copy.style.setProperty(name, value === look.color ? 'currentColor' : value);
  }
}
