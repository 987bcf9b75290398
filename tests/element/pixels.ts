import { executeServerCommand } from '@web/test-runner-commands';

/** The colours on the screen at some places of the window, as `rgb(r, g, b)`. */
export async function pixelsOf(places: readonly (readonly [x: number, y: number])[]): Promise<string[]> {
  const path = 'element/pixels.png';
  await executeServerCommand('picture', { path });
  const response = await fetch(`/reports/${path}`, { cache: 'no-store' });
  const picture = await createImageBitmap(await response.blob());
  const context = new OffscreenCanvas(picture.width, picture.height).getContext('2d');
  if (!context) throw new Error('there is no canvas');
  context.drawImage(picture, 0, 0);
  const scale = devicePixelRatio;
  return places.map(([x, y]) => {
    const [red, green, blue] = context.getImageData(Math.round(x * scale), Math.round(y * scale), 1, 1).data;
    return `rgb(${String(red)}, ${String(green)}, ${String(blue)})`;
  });
}
