import { html, type TemplateResult } from 'lit';
import type { SeasonWeek } from '../../plan/season/document.js';
import { categoryIds } from '../../training/method/ids.js';
import { categoryTitle } from '../../words/category-name.js';
import { datesOf } from '../../words/season/dates.js';
import { eventName } from '../../words/season/event-name.js';
import type { ChartBand, ChartFlag, SweepChartOptions } from '../chart/chart-options.js';
import { readingSlider } from '../chart/reading-slider.js';
import { sweepChart } from '../chart/sweep-chart.js';
import { readWeek } from './read-week.js';
import type { SeasonView } from './season-view.js';

/** As many dates as have room under the picture. */
const mostDates = 7;

/** The minutes of every week, stacked by kind, under its phases; a slider reads the weeks one by one. */
export function seasonChartBox(view: SeasonView): TemplateResult {
  const options = chartOptions(view);
  const { words } = view;
  return html`<div class="season-chart">
    ${sweepChart(options)}
    ${readingSlider({ ...options, id: 'season-reading', label: words.say('season.read'), reading: options.reading ?? 0, words })}
  </div>`;
}

function chartOptions(view: SeasonView): SweepChartOptions {
  const { words, method, season, desk } = view;
  const { weeks } = season;
  const reading = weeks.indexOf(readWeek(view));
  const every = Math.ceil(weeks.length / mostDates);
  const title = words.say('season.chart');
  return {
    id: 'season-chart',
    kind: 'areas',
    x: {
      values: weeks.map(({ number }) => number),
      label: words.say('season.chart.weeks'),
      format: (number) => weekText(view, weeks[number - 1]),
      isChoice: true,
      marked: weeks.filter((_, index) => index % every === 0).map(({ number }) => number),
    },
    y: { label: words.say('season.chart.minutes'), format: (minutes) => words.minutesShort(minutes) },
    series: categoryIds.map((id) => ({
      id,
      name: categoryTitle(words, method, id),
      category: id,
      values: weeks.map(({ rounded }) => rounded[id]),
      steps: true,
    })),
    marks: [],
    bands: bandsOf(view),
    flags: flagsOf(view),
    reading,
    isPressed: true,
    title,
    summary: words.say('season.chart.summary'),
    onPoint: (index) => {
      const week = weeks[index];
      if (week) desk.read(week.start);
    },
  };
}

const weekText = ({ words }: SeasonView, week: SeasonWeek | undefined): string =>
  week ? datesOf(words).short(week.start) : '';

/** Weeks of one phase in a row. */
function bandsOf({ words, season: { weeks } }: SeasonView): readonly ChartBand[] {
  const begins = weeks.flatMap(({ phase }, index) => (weeks[index - 1]?.phase === phase ? [] : [index]));
  return begins.map((from, index) => ({
    from: from / weeks.length,
    to: (begins[index + 1] ?? weeks.length) / weeks.length,
    name: words.say(`phase.${weeks[from]?.phase ?? 'base'}`),
  }));
}

function flagsOf({ words, season: { weeks } }: SeasonView): readonly ChartFlag[] {
  return weeks.flatMap(({ events }, index) =>
    events.map(({ event }) => ({ at: (index + 1) / weeks.length, name: words.capital(eventName(words, event)) })),
  );
}
