import type {} from '../define.js';
import { faultBox } from './fault-box.js';
import { languageOf } from './fault-sentence.js';
import { loadTag } from './load-tag.js';
import { postHeight } from './post-height.js';
import { postPlans } from './post-plans.js';
import { readQuery, type Wishes } from './read-query.js';
import { texts } from './texts.js';

// The page reads its address and nothing else: no message from outside is listened to.
const wishes = readQuery(location.search, (property, value) => CSS.supports(property, value));
const language = languageOf(wishes.lang ?? 'en');

const main = document.createElement('main');
const planner = createPlanner(wishes);
dressPage();
if (wishes.faults.length > 0) main.append(faultBox(language, wishes.faults));
main.append(planner);
document.body.append(main);
if (parent !== window) postHeight();
loadTag().then(talk, admit);

function dressPage(): void {
  const { documentElement: page } = document;
  page.lang = wishes.lang ?? 'en';
  page.dir = language === 'ar' ? 'rtl' : 'ltr';
  if (wishes.scheme) page.style.colorScheme = wishes.scheme;
}

function createPlanner({ attributes, theme }: Wishes): HTMLElementTagNameMap['weekwright-planner'] {
  const element = document.createElement('weekwright-planner');
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  for (const [name, value] of Object.entries(theme)) element.style.setProperty(name, value);
  return element;
}

function talk(): void {
  if (wishes.parent && parent !== window) void postPlans(planner, wishes.parent);
}

function admit(): void {
  const told = document.createElement('p');
  told.setAttribute('role', 'alert');
  told.textContent = texts[language].missing;
  planner.replaceWith(told);
}
