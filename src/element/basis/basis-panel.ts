import { html, type TemplateResult } from 'lit';
import { basisAreas, basisHeadline, differences } from '../../words/basis/basis-lines.js';
import { cited, reasonList } from '../concrete/reason-list.js';
import type { View } from '../view.js';

/** What every default rests on, and every place where studies and common practice differ. */
export const basisPanel = ({ words, method }: View): TemplateResult =>
  html`<header>
      <h3 class="panel-title">${words.say('basis.title')}</h3>
      <p class="lead">${basisHeadline(words, method)}</p>
    </header>
    <section>
      <h4>${words.say('basis.differences')}</h4>
      <div class="boxes">
        ${differences(words, method).map(
          ({ name, text, sources }) =>
            html`<details class="box">
              <summary>${name}</summary>
              <p>${text}</p>
              ${cited(sources)}
            </details>`,
        )}
      </div>
    </section>
    <section>
      <h4>${words.say('basis.areas')}</h4>
      <div class="boxes">
        ${basisAreas(words, method).map(
          ({ title, reasons }) =>
            html`<details class="box">
              <summary>${title}</summary>
              ${reasonList(reasons)}
            </details>`,
        )}
      </div>
    </section>`;
