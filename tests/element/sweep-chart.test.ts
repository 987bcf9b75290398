import { expect } from '@open-wc/testing';
import { accessibleNames, accessibleNodes } from './accessibility-tree.js';
import { needs } from './instruments.js';
import { inScheme } from './scheme.js';
import { html } from 'lit';
import type { SweepChartOptions } from '../../src/element/chart/chart-options.js';
import { readingSlider } from '../../src/element/chart/reading-slider.js';
import { sweepChart } from '../../src/element/chart/sweep-chart.js';
import { faultsOf } from './axe.js';
import { describeWithMedia } from './media.js';
import { openPiece, words, type Piece } from './piece.js';

const hours = Array.from({ length: 79 }, (_, index) => 0.5 + index / 4);
const minutes = (share: number, most = Infinity): number[] => hours.map((each) => Math.min(each * 60 * share, most));
const series: SweepChartOptions['series'] = [
  { id: 'slow', name: 'Slow running', category: 'slow', values: minutes(0.3), steps: false },
  { id: 'tempo', name: 'Tempo running', category: 'tempo', values: minutes(0.15), steps: false },
  { id: 'intervals', name: 'Intervals', category: 'intervals', values: minutes(0.15), steps: false },
  { id: 'cross', name: 'Cross-training', category: 'cross', values: minutes(0.15), steps: false },
  { id: 'strength', name: 'Strength', category: 'strength', values: minutes(0.3, 120), steps: false },
  {
    id: 'other',
    name: 'Something with a name that is much too long',
    category: null,
    values: minutes(0.151),
    steps: true,
  },
];
const usual: SweepChartOptions = {
  id: 'chart',
  kind: 'lines',
  x: { values: hours, label: 'Hours a week', format: words.hoursShort, isChoice: false },
  y: { label: 'Minutes', format: (value) => words.number(value, 0) },
  series,
  marks: [
    { at: 6, number: 1, name: 'Strength cap' },
    { at: 6.25, number: 2, name: 'Too small to train' },
  ],
  reading: 14,
  title: 'Minutes by hours a week',
  summary: 'From 0.5 to 20 hours.',
  onPoint: () => undefined,
};
const phases = ['Off season', 'Base', 'Build', 'Peak', 'Taper', 'Recovery'];
const byPhase: SweepChartOptions = {
  ...usual,
  x: { values: [0, 1, 2, 3, 4, 5], label: 'Season phase', format: (value) => phases[value] ?? '', isChoice: true },
  series: series.map((each) => ({ ...each, values: [60, 72, 72, 72, 30, 0] })),
  marks: [],
  reading: 2,
};

/** A chart with its slider, which follow one another as in a panel. */
async function openChart(given: Partial<SweepChartOptions> = {}, width = 700) {
  const piece = await openPiece();
  piece.element.style.inlineSize = `${String(width)}px`;
  const pointed: number[] = [];
  let options: SweepChartOptions = {
    ...usual,
    ...given,
    onPoint: (reading) => {
      pointed.push(reading);
      options = { ...options, reading };
      piece.element.requestUpdate();
    },
  };
  await piece.show(
    () =>
      html`${sweepChart(options)}${readingSlider({ ...options, id: 'read', label: 'Read at', reading: options.reading ?? 0, words })}`,
  );
  return { piece, pointed };
}

const plot = (piece: Piece): HTMLElement => piece.find('.sweep-plot');
const boxesOf = (piece: Piece, selector: string): DOMRect[] =>
  piece.all(selector).map((each) => each.getBoundingClientRect());
const overlap = (one: DOMRect, other: DOMRect): boolean =>
  one.left < other.right - 1 && other.left < one.right - 1 && one.top < other.bottom - 1 && other.top < one.bottom - 1;

describe('pointing at a chart', () => {
  it('tells the nearest value of the input, when moving and when pressing', async () => {
    const { piece, pointed } = await openChart();
    await piece.mouse(plot(piece), 'move', [0.5, 0.3]);
    await piece.mouse(plot(piece), 'move', [0.5, 0.9]);
    await piece.mouse(plot(piece), 'click', [0.25, 0.5]);
    expect(pointed[0]).to.equal(39);
    expect(pointed.at(-1)).to.be.within(19, 20);
    // Once for each value, not for each movement.
    expect(new Set(pointed).size).to.equal(pointed.length);
  });

  it('takes the band of a choice', async () => {
    const { piece, pointed } = await openChart(byPhase);
    await piece.mouse(plot(piece), 'click', [0.7, 0.5]);
    expect(pointed).to.deep.equal([4]);
  });

  it('moves the ruler to where the pointer is', async () => {
    const { piece } = await openChart();
    await piece.mouse(plot(piece), 'click', [0.75, 0.5]);
    const { left, width } = plot(piece).getBoundingClientRect();
    const ruler = piece.find('.sweep-ruler').getBoundingClientRect();
    expect((ruler.left + ruler.width / 2 - left) / width).to.be.closeTo(0.75, 0.01);
  });

  it('counts from the left on pages from right to left, too', async () => {
    const { piece, pointed } = await openChart();
    piece.element.dir = 'rtl';
    await piece.mouse(plot(piece), 'click', [0.99, 0.5]);
    expect(pointed.at(-1)).to.be.within(77, 78);
    expect(getComputedStyle(piece.find('#read')).direction).to.equal('ltr');
  });
});

describe('the slider of a chart', () => {
  it('moves the ruler by keys, and says what stands there', async () => {
    const { piece, pointed } = await openChart();
    const slider = piece.find<HTMLInputElement>('#read');
    slider.focus();
    await piece.press('ArrowRight', 'End', 'Home');
    expect(pointed).to.deep.equal([15, 78, 0]);
    expect(slider.ariaValueText).to.equal(
      '30 min: Slow running 9; Tempo running 5; Intervals 5; Cross-training 5; Strength 9; ' +
        'Something with a name that is much too long 5',
    );
  });

  it('says where there is no value', async () => {
    const { piece } = await openChart({ series: [{ ...series[0]!, values: hours.map(() => NaN) }] });
    expect(piece.find('#read').ariaValueText).to.equal('4 h: Slow running no value');
  });
});

describe('the words of a chart', () => {
  for (const width of [320, 360, 700, 900])
    for (const [name, options] of Object.entries({ 'over numbers': usual, 'over choices': byPhase }))
      for (const kind of ['lines', 'areas'] as const)
        it(`do not touch one another: ${kind} ${name} in ${String(width)} pixels`, async () => {
          const { piece } = await openChart({ ...options, kind }, width);
          const groups = ['.sweep-ends span', '.sweep-inside', '.sweep-x span', '.sweep-y span', '.sweep-marks span'];
          for (const group of groups) {
            const boxes = boxesOf(piece, group);
            boxes.forEach((box, index) => {
              for (const other of boxes.slice(index + 1)) expect(overlap(box, other), group).to.equal(false);
            });
          }
          const labels = piece.all('.sweep-ends span, .sweep-inside');
          expect(labels).to.have.length(series.length);
        });

  for (const width of [320, 900])
    it(`stay within ${String(width)} pixels`, async () => {
      const { piece } = await openChart({}, width);
      const frame = piece.find('.planner').getBoundingClientRect();
      const drawn = boxesOf(piece, '.sweep-picture *').filter(({ width: across }) => across > 0);
      expect(drawn.length).to.be.greaterThan(20);
      for (const box of drawn) {
        expect(box.right).to.be.at.most(frame.right + 0.5);
        expect(box.left).to.be.at.least(frame.left - 0.5);
      }
    });

  it('keep the size of the page', async () => {
    const { piece } = await openChart();
    const size = (): string => getComputedStyle(piece.find('.sweep-x span')).fontSize;
    expect(size()).to.equal('13px');
    piece.element.style.fontSize = '32px';
    expect(size()).to.equal('26px');
  });
});

describe('the lines of a chart', () => {
  it('have each its own dashes', async () => {
    const { piece } = await openChart();
    const dashes = piece.all('.sweep-line').map((line) => getComputedStyle(line).strokeDasharray);
    expect(new Set(dashes).size).to.equal(series.length);
  });

  it('keep their width, however wide the chart is', async () => {
    const { piece } = await openChart({}, 900);
    for (const line of piece.all('.sweep path')) {
      expect(getComputedStyle(line).getPropertyValue('vector-effect')).to.equal('non-scaling-stroke');
    }
  });

  describeWithMedia('with forced colours', { 'forced-colors': 'active' }, () => {
    it('are black or white', async () => {
      const { piece } = await openChart({ kind: 'areas' });
      const [area] = piece.all('.sweep-area');
      if (!area) throw new Error('there is no area');
      const { stroke, fill } = pick(area);
      const { color } = getComputedStyle(piece.find('.sweep-inside, .sweep-ends span'));
      expect(stroke).to.equal(color);
      expect(fill).to.not.equal(color);
    });
  });

  it('need no element for a value', async () => {
    const { piece } = await openChart();
    expect(piece.all('.sweep *').length).to.be.lessThan(80);
  });
});

function pick(element: Element): { readonly stroke: string; readonly fill: string } {
  const { stroke, fill } = getComputedStyle(element);
  return { stroke, fill };
}

describe('a chart for everybody', () => {
  it('is a picture and a slider, each with a name', async () => {
    await openChart();
    expect(await accessibleNames(/^(?:image|slider)$/)).to.deep.equal([
      'image: Minutes by hours a week',
      'slider: Read at',
    ]);
  });

  needs('accessibleValues', () => {
    it('is a picture with a description', async () => {
      await openChart();
      const [picture] = await accessibleNodes(/^image$/);
      expect(picture?.description).to.equal('From 0.5 to 20 hours.');
    });
  });

  for (const scheme of ['light', 'dark'] as const)
    describe(scheme, () => {
      inScheme(scheme);

      it('axe finds nothing', async () => {
        const { piece } = await openChart({ kind: 'areas' });
        expect(await faultsOf(piece)).to.deep.equal([]);
      });
    });
});
