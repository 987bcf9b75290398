import { methodChild } from './method-check.js';
import { attributesOf, methodText, queryOf, stylesOf } from './planner-of.js';

/** @typedef {import('./chosen.js').Choices} Choices */

/**
 * What the lines will show, as an element of the page.
 * @param {Choices} choices
 */
export const createPreview = (choices) => (choices.output === 'frame' ? createFrame(choices) : createTag(choices));

/** @param {Choices} choices */
function createTag(choices) {
  const planner = document.createElement('weekwright-planner');
  for (const [name, value] of attributesOf(choices)) planner.setAttribute(name, value);
  for (const [name, value] of stylesOf(choices)) planner.style.setProperty(name, value);
  const method = methodText(choices.method);
  if (method !== null) planner.append(methodChild(method));
  return planner;
}

/** @param {Choices} choices */
function createFrame(choices) {
  const frame = document.createElement('iframe');
  frame.src = `/embed.html?${queryOf(choices)}`;
  frame.title = 'Preview of the frame';
  frame.allow = 'clipboard-write';
  // Without the script the frame keeps its height, also on this page, which has the script.
  frame.className = choices.fits ? 'fits' : 'keeps';
  return frame;
}
