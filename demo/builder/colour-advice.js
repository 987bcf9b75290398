import { contrast, luminance } from './contrast.js';

const needed = 4.5;

/** Grounds lighter than this are read with the colours of the light scheme. */
const middle = 0.18;

/**
 * What is worth knowing of colours of one's own, as sentences.
 * @param {import('./chosen.js').Choices} choices
 * @returns {readonly string[]}
 */
export function colourAdvice({ colours: { accent, ground, text }, scheme }) {
  if (!accent || !ground || !text) return [];
  const fitting = luminance(ground) > middle ? 'light' : 'dark';
  return [
    pairAdvice('Text', text, ground),
    pairAdvice('Accent', accent, ground),
    ...(scheme === fitting ? [] : [`This ground needs the ${fitting} scheme: the planner’s other colours follow it.`]),
  ];
}

/** @param {string} name @param {string} colour @param {string} ground */
function pairAdvice(name, colour, ground) {
  const ratio = contrast(colour, ground);
  // Rounded down: what is just too little shall not look like enough.
  const shown = (Math.floor(ratio * 10) / 10).toFixed(1);
  return `${name} on ground: ${shown} to 1${ratio < needed ? `, too little to read well; ${needed} is needed.` : ', enough.'}`;
}
