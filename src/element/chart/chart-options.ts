/** One quantity over the input's whole range. */
export interface ChartSeries {
  readonly id: string;
  readonly name: string;
  /** The training category that gives it its colour. */
  readonly category: string | null;
  /** One for each value of the input; NaN where there is none. */
  readonly values: ArrayLike<number>;
  /** Whether it goes from value to value in steps. */
  readonly steps: boolean;
}

/** The input that is swept. */
export interface ChartInput {
  /** Ascending; for a choice one number for each choice. */
  readonly values: readonly number[];
  readonly label: string;
  readonly format: (value: number) => string;
  readonly isChoice: boolean;
  /** The values that stand on the axis; round ones, or all choices, where left out. */
  readonly marked?: readonly number[];
}

/** A stretch of the axis with a name over it, as shares of the width. */
export interface ChartBand {
  readonly from: number;
  readonly to: number;
  readonly name: string;
}

/** A line across the picture with a name at its top, as a share of the width. */
export interface ChartFlag {
  readonly at: number;
  readonly name: string;
}

/** A turning point: where on the input's range it is, and its number in the list under the chart. */
export interface ChartMark {
  readonly at: number;
  readonly number: number;
  readonly name: string;
}

export interface SweepChartOptions {
  /** Of its own within the shadow root. */
  readonly id: string;
  /** Areas stand on one another. */
  readonly kind: 'lines' | 'areas';
  readonly x: ChartInput;
  readonly y: { readonly label: string; readonly format: (value: number) => string };
  readonly series: readonly ChartSeries[];
  readonly marks: readonly ChartMark[];
  /** Named stretches, in the place of the marks' numbers. */
  readonly bands?: readonly ChartBand[];
  readonly flags?: readonly ChartFlag[];
  /** Whether pointing counts only while it is pressed. */
  readonly isPressed?: boolean;
  /** The index in `x.values` at which the ruler stands. */
  readonly reading: number | null;
  readonly title: string;
  readonly summary: string;
  /** Somebody points at another index than that of the ruler. */
  readonly onPoint: (index: number) => void;
}
