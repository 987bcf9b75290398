import { html, type TemplateResult } from 'lit';
import { live } from '../parts/live.js';
import { cssVariables } from '../parts/css-variables.js';
import { headed, joined } from '../../words/joined.js';
import type { Words } from '../../words/words.js';
import type { SweepChartOptions } from './chart-options.js';

export interface ReadingSliderOptions extends Pick<SweepChartOptions, 'x' | 'y' | 'series' | 'onPoint'> {
  /** Of its own within the shadow root. */
  readonly id: string;
  readonly label: string;
  readonly reading: number;
  readonly words: Pick<Words, 'say'>;
}

/** The ruler of a chart for hands on a keyboard, and its values for ears: "4 hours: slow running 70 minutes; …". */
export function readingSlider(options: ReadingSliderOptions): TemplateResult {
  const { id, label, x, reading, onPoint } = options;
  const last = x.values.length - 1;
  // From left to right on every page, as the chart above it is.
  return html`<div class="reading">
    <label for=${id}>${label}</label>
    <input
      id=${id}
      type="range"
      dir="ltr"
      min="0"
      max=${last}
      step="1"
      aria-valuetext=${spokenReading(options)}
      .value=${live(String(reading))}
      ${cssVariables({ '--fill': `${String((reading / Math.max(1, last)) * 100)}%` })}
      @input=${({ currentTarget }: Event) => {
        if (currentTarget instanceof HTMLInputElement) onPoint(currentTarget.valueAsNumber);
      }}
    />
  </div>`;
}

/** What stands at the ruler, in one line. */
export function spokenReading({
  x,
  y,
  series,
  reading,
  words,
}: Pick<ReadingSliderOptions, 'x' | 'y' | 'series' | 'reading' | 'words'>): string {
  const values = series.map(({ name, values }) => `${name} ${y.format(values[reading] ?? NaN)}`);
  return headed(words, x.format(x.values[reading] ?? NaN), joined(words, values, 'semicolon'));
}
