import { builtInRunning } from '../../training/method/built-in-running.js';
import type { Method } from '../../training/method/document.js';
import type { RunningRules } from '../../training/method/running-rules.js';

/** How a method makes running concrete: by its own rules, or by those of the built-in method. */
export const runningRules = ({ running }: Pick<Method, 'running'>): RunningRules => running ?? builtInRunning;
