import type { Sheet } from '../../sheet/sheet.js';
import type { Method } from '../../training/method/document.js';
import { strengthUpkeep } from '../../training/method/names.js';
import { carrySeason } from './carry-season.js';
import { readSeason } from './read-season.js';
import type { SeasonMaker } from './season-maker.js';
import { upkeepMinutes } from './upkeep.js';
import { FiguresSource } from './week-figures.js';

/** What carries weeks through a season for planners. */
export function createSeasonMaker(): SeasonMaker {
  const sources = new WeakMap<Sheet, FiguresSource>();
  const sourceOf = (method: Method, sheet: Sheet): FiguresSource => {
    const source = sources.get(sheet) ?? new FiguresSource(method, sheet);
    sources.set(sheet, source);
    return source;
  };
  return {
    read: readSeason,
    values: (method, { inputs, season }) => ({
      [strengthUpkeep]: season ? upkeepMinutes(method, season, inputs.phase) : 0,
    }),
    carry: ({ method, sheet }, { inputs, season }) =>
      season && carrySeason({ method, sheet, source: sourceOf(method, sheet) }, inputs, season),
  };
}
