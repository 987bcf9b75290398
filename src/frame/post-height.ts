/** A script of the page around may come late, and a frame out of sight hears of no changes: half a minute of asking anew. */
const again = [250, 500, 1000, 2000, 4000, 8000, 16_000, 32_000];

/**
 * Tells the page around how high this one is, now and whenever that changes.
 *
 * It goes to any origin, for a height holds nothing private, and who frames this page is not known.
 */
export function postHeight(): void {
  let last = 0;
  const post = (height: number): void => {
    last = height;
    // Where nothing is laid out, as in a closed tab of the page around, there is no height to tell.
    if (height > 0) parent.postMessage({ type: 'weekwright-height', height }, '*');
  };
  new ResizeObserver(() => {
    const height = measure();
    if (height !== last) post(height);
  }).observe(document.documentElement);
  for (const milliseconds of again)
    setTimeout(() => {
      post(measure());
    }, milliseconds);
}

const measure = (): number => Math.ceil(document.documentElement.getBoundingClientRect().height);
