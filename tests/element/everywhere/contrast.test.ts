import { expect } from '@open-wc/testing';
import { setViewport } from '@web/test-runner-commands';
import { contrast } from '../../core/element/colour-maths.js';
import { tabTo } from '../by-keys.js';
import { describeWithMedia } from '../media.js';
import { pixelsOf } from '../pixels.js';
import { inScheme } from '../scheme.js';
import type { SheetPage } from '../sheet/sheet-page.js';
import { collapsed } from '../text.js';
import { openPlace, panelNames, places } from './places.js';

/** A computed colour as #rrggbb: painted on one pixel, as the browser has it. */
function hex(colour: string): string {
  const context = new OffscreenCanvas(1, 1).getContext('2d');
  if (!context) throw new Error('there is no canvas');
  context.fillStyle = colour;
  context.fillRect(0, 0, 1, 1);
  const [red = 0, green = 0, blue = 0] = context.getImageData(0, 0, 1, 1).data;
  return `#${[red, green, blue].map((part) => part.toString(16).padStart(2, '0')).join('')}`;
}

const isClear = (colour: string): boolean => colour === 'transparent' || /[,/] ?0\)$/.test(colour);

/** The colour that something lies on. */
function groundOf(each: Element): string {
  for (let at: Element | null = each; at; at = at.parentElement) {
    const { backgroundColor } = getComputedStyle(at);
    if (!isClear(backgroundColor)) return hex(backgroundColor);
  }
  return hex('Canvas');
}

const seen = (page: SheetPage, selector: string): HTMLElement[] =>
  page.all(selector).filter((each) => each.checkVisibility() && !each.closest('.visually-hidden'));
const under = (least: number, one: string, other: string): boolean => contrast(hex(one), other) < least;

before(() => setViewport({ width: 1000, height: 900 }));
after(() => setViewport({ width: 800, height: 600 }));

// WCAG 2.2, success criterion 1.4.11.
for (const scheme of ['light', 'dark'] as const)
  describe(`what is no text stands out 3 : 1, ${scheme}`, () => {
    inScheme(scheme);

    for (const panel of panelNames)
      it(`edges of fields, lists and buttons, and the colours of kinds: ${panel}`, async () => {
        const page = await openPlace(panel, 'open');
        const { root } = places[panel];
        const edged = seen(page, `${root} :is(select, textarea, .entry, .typed:not(.entry *), button.act)`);
        const coloured = seen(page, `${root} :is(.swatch, [data-category].card)`);
        expect(edged.length + coloured.length + seen(page, `${root} summary`).length).to.be.greaterThan(0);
        const pale = edged.filter((each) => {
          const { borderTopColor, borderTopWidth } = getComputedStyle(each);
          // The name of a scenario is a text that can be written over: nobody sees an edge before coming to it.
          if (each.matches('.name .typed') && isClear(borderTopColor)) return false;
          const ground = groundOf(each.parentElement ?? each);
          const isFilled = contrast(groundOf(each), ground) >= 3;
          return !isFilled && (borderTopWidth === '0px' || isClear(borderTopColor) || under(3, borderTopColor, ground));
        });
        expect(pale.map(({ outerHTML }) => outerHTML.slice(0, 120))).to.deep.equal([]);
        const lost = coloured.filter((each) => {
          const { backgroundColor, borderInlineStartColor } = getComputedStyle(each);
          const ground = groundOf(each.parentElement ?? each);
          return under(3, backgroundColor, ground) && under(3, borderInlineStartColor, ground);
        });
        expect(lost.map(({ outerHTML }) => outerHTML.slice(0, 120))).to.deep.equal([]);
      });

    it('the parts of the ring and of the charts', async () => {
      for (const [panel, selector] of [
        ['split', '.arc'],
        ['season', '.season-chart path[data-category]'],
        ['sheet', '.sweep path[data-category]'],
      ] as const) {
        const page = await openPlace(panel, 'open');
        const parts = page.all(selector);
        expect(parts.length, panel).to.be.greaterThan(4);
        const pale = parts.filter((each) => {
          const { fill, stroke } = getComputedStyle(each);
          const ground = groundOf(each);
          return [fill, stroke].every((paint) => paint === 'none' || under(3, paint, ground));
        });
        expect(pale.map(({ outerHTML }) => outerHTML.slice(0, 120))).to.deep.equal([]);
      }
    });

    it('the thumb of a slider, and its track on both sides', async () => {
      const page = await openPlace('split', 'shut');
      const slider = page.slider('hours');
      slider.scrollIntoView({ block: 'center' });
      const { left, top, width, height } = slider.getBoundingClientRect();
      const middle = top + height / 2;
      const share = (slider.valueAsNumber - Number(slider.min)) / (Number(slider.max) - Number(slider.min));
      const thumb: [number, number] = [left + 12 + share * (width - 24), middle];
      const edge = [-4, -3, -2].map((above): [number, number] => [left + width * 0.9, Math.round(middle) + above]);
      const colours = await pixelsOf([thumb, [left + width * 0.1, middle], ...edge]);
      const ground = groundOf(slider);
      const [onThumb = '', filled = '', ...onEdge] = colours;
      expect(contrast(hex(onThumb), ground)).to.be.at.least(3);
      expect(contrast(hex(filled), ground)).to.be.at.least(3);
      // One of three rows of pixels is the edge of what is not filled.
      expect(Math.max(...onEdge.map((colour) => contrast(hex(colour), ground)))).to.be.at.least(3);
    });

    it('the outline of the focus', async () => {
      for (const panel of panelNames) {
        const page = await openPlace(panel, 'shut');
        const [control] = seen(page, `${places[panel].root} :is(button, summary, select, input)`);
        if (!control) throw new Error(`${panel} has no control`);
        await tabTo(page, control);
        const { outlineColor } = getComputedStyle(control);
        expect(contrast(hex(outlineColor), groundOf(control.parentElement ?? control)), panel).to.be.at.least(3);
      }
    });
  });

describeWithMedia(
  'in forced colours text can be read, by the colours that are painted',
  { 'forced-colors': 'active' },
  () => {
    for (const panel of panelNames)
      it(panel, async () => {
        const page = await openPlace(panel, 'open');
        const texts = seen(page, `${places[panel].root} *:not(option, svg *)`).filter((each) =>
          [...each.childNodes].some((node) => node instanceof Text && node.data.trim() !== ''),
        );
        expect(texts.length).to.be.greaterThan(10);
        const pale = texts.filter((each) => under(4.5, getComputedStyle(each).color, groundOf(each)));
        expect(pale.map((each) => `${each.className} ${collapsed(each).slice(0, 60)}`)).to.deep.equal([]);
      });
  },
);
