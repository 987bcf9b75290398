import { html, type TemplateResult } from 'lit';
import type { Words } from '../../words/words.js';

/** Where the season of a page cannot be used, a person can begin one. */
export function noSeason(words: Words, begin: () => void): TemplateResult {
  return html`<h3 class="panel-title" id="season-title" tabindex="-1">${words.say('season.title')}</h3>
    <p>${words.say('season.faulty')}</p>
    <p><button type="button" class="act" @click=${begin}>${words.say('season.begin-today')}</button></p>`;
}
