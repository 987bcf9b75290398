// Written by `npm run compile` from shared/methods/default.json. Change that, not this.
import type { SeasonRules } from './season-rules.js';

export const builtInSeason: SeasonRules = {
  weeks: 16,
  phases: [
    { phase: 'base', share: 0.5, least: 1 },
    { phase: 'build', share: 0.3, least: 1 },
    { phase: 'peak', share: 0.2, least: 1 },
  ],
  rises: ['base', 'build'],
  rise: {
    share: 0.1,
    look: 0.2,
    most: 1.5,
    status: 'common practice',
    sources: ['C01', 'C02', 'C03', 'C04'],
    reason: { key: 'season-reason.rise' },
  },
  easier: {
    every_weeks: 4,
    drop: 0.3,
    status: 'common practice',
    sources: ['C18', 'C19'],
    reason: { key: 'season-reason.easier' },
  },
  taper: {
    weeks: 2,
    drop: 0.5,
    least: 0.41,
    most: 0.6,
    status: 'published',
    sources: ['C11', 'C12', 'C13'],
    reason: { key: 'season-reason.taper' },
  },
  upkeep: {
    from: 'taper',
    sessions: 2,
    status: 'published',
    sources: ['A25'],
    reason: { key: 'season-reason.upkeep' },
  },
  recovery: { weeks: 2, share: 0.5, status: 'assumption', reason: { key: 'season-reason.recovery' } },
  way_back: {
    off_share: 0.25,
    steps: [
      { weeks: 1, shares: [0.8] },
      { weeks: 2, shares: [0.6, 0.8] },
      { weeks: 4, shares: [0.5, 0.65, 0.8] },
      { weeks: 8, shares: [0.4, 0.5, 0.65, 0.8] },
    ],
    status: 'assumption',
    sources: ['C14', 'C16', 'C17'],
    reason: { key: 'season-reason.way-back' },
  },
  single_run: {
    most: 1.1,
    weeks: 4,
    status: 'published',
    sources: ['C05'],
    reason: { key: 'season-reason.single-run' },
  },
};
