import { html, nothing, type TemplateResult } from 'lit';
import { live } from './live.js';
import { cssVariables } from './css-variables.js';

export interface SliderOptions {
  /** Ids of the elements that name it. */
  readonly labelledBy: string;
  readonly describedBy?: string;
  /** The value as it is read out: "4 hours". */
  readonly spoken: string;
  readonly least: number;
  readonly most: number;
  readonly step: number;
  readonly value: number;
  readonly change: (value: number) => void;
}

/** A slider, filled up to its value. */
export function slider(options: SliderOptions): TemplateResult {
  const { labelledBy, describedBy, spoken, least, most, step, value, change } = options;
  return html`<input
    type="range"
    part="slider"
    aria-labelledby=${labelledBy}
    aria-describedby=${describedBy ?? nothing}
    aria-valuetext=${spoken}
    min=${least}
    max=${most}
    step=${step}
    .value=${live(String(value))}
    ${cssVariables({ '--fill': `${String(((value - least) / (most - least)) * 100)}%` })}
    @input=${({ currentTarget }: Event) => {
      if (currentTarget instanceof HTMLInputElement) change(currentTarget.valueAsNumber);
    }}
  />`;
}
