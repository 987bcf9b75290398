// Written by `npm run compile` from shared/methods/default.json. Change that, not this.
import type { RunningRules } from './running-rules.js';

export const builtInRunning: RunningRules = {
  kinds: [
    {
      id: 'slow',
      uptake: { least: 0.6, most: 0.74 },
      effort: { least: 2, most: 4 },
      status: 'assumption',
      sources: ['B02', 'B12', 'dg'],
      reason: { key: 'running-reason.slow' },
    },
    {
      id: 'tempo',
      uptake: { least: 0.84, most: 0.89 },
      effort: { least: 5, most: 6 },
      warm_up: { minutes: 15, most_share: 0.3 },
      cool_down: { minutes: 10, most_share: 0.15 },
      bouts: { work: 20, rest: 2 },
      status: 'assumption',
      sources: ['B12', 'dg'],
      reason: { key: 'running-reason.tempo' },
    },
    {
      id: 'intervals',
      uptake: { least: 0.93, most: 1 },
      effort: { least: 7, most: 9 },
      warm_up: { minutes: 15, most_share: 0.3 },
      cool_down: { minutes: 10, most_share: 0.15 },
      bouts: { work: 3, rest: 2 },
      status: 'assumption',
      sources: ['B01', 'B12', 'dg'],
      reason: { key: 'running-reason.intervals' },
    },
  ],
  equal_times: {
    distances: [1500, 1609.344, 3000, 5000, 10000, 15000, 21097.5, 42195],
    least_seconds: 210,
    most_seconds: 13800,
    marathon_minutes: 10,
    outside_share: 0.05,
    old_days: 180,
    status: 'published',
    sources: ['riegel', 'dg', 'vickers'],
    reason: { key: 'running-reason.equal-times' },
  },
  threshold: { minutes: 60, status: 'common practice', sources: ['dg'], reason: { key: 'running-reason.threshold' } },
  heart: {
    estimates: [
      { id: 'tanaka', from: 208, slope: 0.7 },
      { id: 'gellish', from: 207, slope: 0.7 },
    ],
    spread: { least: 7, most: 12 },
    bands: [
      { id: 'very-light', uptake: 0, reserve: 0, highest: 0 },
      { id: 'light', uptake: 0.37, reserve: 0.3, highest: 0.57 },
      { id: 'moderate', uptake: 0.46, reserve: 0.4, highest: 0.64 },
      { id: 'vigorous', uptake: 0.64, reserve: 0.6, highest: 0.77 },
      { id: 'near-maximal', uptake: 0.91, reserve: 0.9, highest: 0.96 },
    ],
    status: 'published',
    sources: ['karvonen', 'tanaka', 'gellish', 'robergs', 'garber'],
    reason: { key: 'running-reason.heart' },
  },
  energy: {
    cross: { least: 5, most: 8 },
    strength: { least: 3.5, most: 6 },
    status: 'published',
    sources: ['acsm', 'herrmann'],
    reason: { key: 'running-reason.energy' },
  },
};
