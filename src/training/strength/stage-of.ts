import type { LevelId, PhaseId } from '../method/ids.js';
import type { Stage } from '../method/strength-rules.js';

/** The first stage that fits a phase and a level. */
export function stageOf(stages: readonly Stage[], phase: PhaseId, level: LevelId): Stage {
  const fitting = stages.find(
    ({ phases, levels }) => (phases?.includes(phase) ?? true) && (levels?.includes(level) ?? true),
  );
  if (!fitting) throw new Error('the last stage of a method is for everybody');
  return fitting;
}
