import { solveWeek } from '../../plan/week/week-solver.js';
import type { WeekProblem } from '../../training/week/week-problem.js';

// Runs in a worker: a problem in, its solution out.
addEventListener('message', ({ data }: MessageEvent<WeekProblem>) => {
  postMessage(solveWeek(data));
});
