import { readChoices } from './chosen.js';
import { colourAdvice } from './colour-advice.js';
import { copyLines } from './copy.js';
import { checkMethod } from './method-check.js';
import { makeMovable } from './panel-list.js';
import { createPreview } from './preview.js';
import { writeSnippet } from './snippet.js';

/** A preview is made anew once nothing has been typed for a while. */
const pause = 300;

const find = (selector) => document.querySelector(selector);
const form = find('#choices');
const lines = find('#lines');
const status = find('#status');
const stage = find('#stage');

let timer = 0;
let shown = '';
let checked = '';

function update() {
  // First: what is disabled is not among what is read.
  find('#own-colours').disabled = new FormData(form).get('colours') !== 'own';
  const choices = readChoices(form);
  form.dataset.output = choices.output;
  list('#colour-advice', colourAdvice(choices));
  find('#no-panel').hidden = choices.panels.length > 0;
  find('#own-file').hidden = choices.output !== 'frame' || choices.method === '';
  find('#stage-note').hidden = find('#own-file').hidden;
  writeLines(writeSnippet(choices));
  clearTimeout(timer);
  timer = setTimeout(show, pause, choices);
}

/** @param {string} snippet */
function writeLines(snippet) {
  if (lines.value !== snippet) status.textContent = '';
  lines.value = snippet;
  fit();
}

/** As high as its lines: nothing to scroll in a box. */
function fit() {
  lines.style.blockSize = 'auto';
  lines.style.blockSize = `${lines.scrollHeight + 2}px`;
}

async function show(choices) {
  void check(choices.method);
  const wanted = JSON.stringify(choices);
  if (wanted === shown) return;
  shown = wanted;
  // What is below stays where it is while the planner comes.
  stage.style.minBlockSize = `${stage.offsetHeight}px`;
  const preview = createPreview(choices);
  stage.replaceChildren(preview);
  await ('updateComplete' in preview ? preview.updateComplete : new Promise((done) => (preview.onload = done)));
  if (wanted === shown) stage.style.minBlockSize = '';
}

async function check(text) {
  if (text === checked) return;
  checked = text;
  const told = text === '' ? [] : await checkMethod(find('#checker'), text);
  if (text === checked) list('#method-advice', told);
}

/** @param {string} selector @param {readonly string[]} sentences */
function list(selector, sentences) {
  const place = find(selector);
  const items = sentences.map((sentence) => Object.assign(document.createElement('li'), { textContent: sentence }));
  if (place.innerText !== sentences.join('\n')) place.replaceChildren(...items);
}

makeMovable(find('#panels'), (text) => (find('#moved').textContent = text));
form.addEventListener('input', update);
form.addEventListener('change', update);
form.addEventListener('submit', (event) => event.preventDefault());
find('#copy').addEventListener('click', async () => {
  status.textContent = '';
  status.textContent = await copyLines(lines);
});
addEventListener('resize', fit);
update();
