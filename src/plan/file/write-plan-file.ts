import { writeScenarios } from '../scenarios/write-scenarios.js';
import type { HandoutTexts, PlanFile, PlanFileDocument } from './document.js';

/**
 * A plan file as plain data, without the parts that are empty; `readPlanFile` makes the same of it. What was told is copied
 * as it is, answers to the questions before the start excepted.
 */
export function writePlanFile(file: PlanFile): PlanFileDocument {
  const { name, sheet, onShow, running, strength, checks, record, handout } = file;
  return {
    format: 'weekwright-file',
    version: 1,
    ...(name === '' ? {} : { name }),
    sheet: writeScenarios(sheet),
    ...(onShow === sheet.reference ? {} : { onShow }),
    ...(running && isTold(running) ? { running: told(running) } : {}),
    ...(strength && isTold(strength) ? { strength: told(strength) } : {}),
    ...(checks && isTold(checks) ? { checks: told(checks) } : {}),
    ...(record.length === 0 ? {} : { record }),
    ...withTexts(handout),
  };
}

const isTold = (request: object): boolean => Object.keys(told(request)).length > 0;

/** Whatever a caller hands over: what somebody answered about their health is in no file. */
function told(request: object): object {
  return Object.fromEntries(
    Object.entries(request).filter(([field, value]) => field !== 'answers' && value !== undefined),
  );
}

function withTexts({ runner, contact, note }: HandoutTexts): Pick<PlanFileDocument, 'handout'> {
  const texts = {
    ...(runner === '' ? {} : { runner }),
    ...(contact === '' ? {} : { contact }),
    ...(note === '' ? {} : { note }),
  };
  return isTold(texts) ? { handout: texts } : {};
}
