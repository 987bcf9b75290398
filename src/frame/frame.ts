// For the page around: makes every frame of the planner as high as what is in it. It may be loaded early, late and twice.
const [least, most] = [150, 20_000];

addEventListener('message', ({ data, origin, source }) => {
  const frame = Array.from(document.querySelectorAll('iframe')).find((each) => each.contentWindow === source);
  const height = heightIn(data);
  if (!source || !frame || height === null || origin !== originOf(frame)) return;
  const edges = getComputedStyle(frame).boxSizing === 'border-box' ? frame.offsetHeight - frame.clientHeight : 0;
  frame.style.height = `${Math.min(Math.max(Math.ceil(height), least), most) + edges}px`;
});

/** The origin that messages of a frame have: that of its address, or none at all where a sandbox takes it away. */
function originOf(frame: HTMLIFrameElement): string | null {
  if (frame.hasAttribute('sandbox') && !frame.sandbox.contains('allow-same-origin')) return 'null';
  const origin = URL.canParse(frame.src) ? new URL(frame.src).origin : 'null';
  return origin === 'null' ? null : origin;
}

function heightIn(data: unknown): number | null {
  if (typeof data !== 'object' || data === null || !('type' in data) || !('height' in data)) return null;
  const { type, height } = data;
  return type === 'weekwright-height' && Number.isFinite(height) ? Number(height) : null;
}
