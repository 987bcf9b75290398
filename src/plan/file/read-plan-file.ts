import type { Outcome, Problem } from '../../problem.js';
import type { Method } from '../../training/method/document.js';
import type { DoneSession } from '../../training/record/done-session.js';
import { readChecks } from '../checks/read-checks.js';
import { object, oneOf, orNull, readAs, text, whole, type Reader } from '../fields.js';
import { inOrder } from '../record/acts.js';
import { faultyRecordDates, recordReader } from '../record/read-record.js';
import { readRunning } from '../running/read-running.js';
import { scenarioLimits, type ScenarioSheet } from '../scenarios/document.js';
import { readScenarios } from '../scenarios/read-scenarios.js';
import { readStrength } from '../strength/read-strength.js';
import { strengthGround } from '../strength/strength-ground.js';
import { handoutLimits, type HandoutTexts, type PlanFile } from './document.js';

/** The newest version of the format. */
const version = 1;

/**
 * Reads a plan file from outside, as `writePlanFile` makes it: the file first, then each part by its own reader. A what-if
 * sheet alone, as links of the first version have it, is a file too. The texts of formulas are not compiled here.
 *
 * @param method the method in use; a file made with another is refused.
 * @returns the file, or every problem of the first stage that has one: version, shape, the parts.
 */
export function readPlanFile(document: unknown, method: Method): Outcome<PlanFile> {
  const { format, ...newer } = formatOf(document);
  if (newer.problem) return { ok: false, problems: [newer.problem] };
  if (format !== 'weekwright-sheet') return readParts(document, method);
  const sheet = readScenarios(document, method);
  return sheet.ok ? { ok: true, value: fileOfSheet(sheet.value) } : sheet;
}

/** A what-if sheet as a file: nothing else is told. */
export const fileOfSheet = (sheet: ScenarioSheet): PlanFile => ({
  name: '',
  sheet,
  onShow: sheet.reference,
  running: null,
  strength: null,
  checks: null,
  record: [],
  handout: noTexts,
});

/** A file of a later version may have fields that are not known here: its version is all there is to say. */
function formatOf(document: unknown): { readonly format: unknown; readonly problem?: Problem } {
  if (typeof document !== 'object' || document === null || !('format' in document)) return { format: undefined };
  const { format } = document;
  if (format !== 'weekwright-file' || !('version' in document)) return { format };
  const { version: value } = document;
  if (typeof value !== 'number' || !Number.isInteger(value) || value <= version) return { format };
  return { format, problem: { path: 'version', value, code: 'newer-version', allowed: { most: version } } };
}

const noTexts: HandoutTexts = { runner: '', contact: '', note: '' };

interface Shape {
  readonly name: string;
  readonly sheet: unknown;
  readonly onShow: string | undefined;
  readonly running: object | null;
  readonly strength: object | null;
  readonly checks: object | null;
  readonly record: readonly DoneSession[];
  readonly handout: HandoutTexts;
}

const upTo =
  (most: number): Reader<string> =>
  (value, place) => {
    const read = text(value, place);
    if (typeof read !== 'string' || Array.from(read).length <= most) return read;
    place.problems.push({ path: place.path, value: read.slice(0, 40), code: 'too-long', allowed: { most } });
    return read;
  };

const anything: Reader<unknown> = (value) => value;

/** An object that its own reader looks into. */
const whateverObject: Reader<object> = (value, place) => {
  const isObject = typeof value === 'object' && value !== null && !Array.isArray(value);
  if (isObject) return value;
  return object(() => ({}))(value, place);
};

const handout: Reader<HandoutTexts> = object(({ take }) => ({
  runner: take('runner', upTo(handoutLimits.runner)) ?? '',
  contact: take('contact', upTo(handoutLimits.contact)) ?? '',
  note: take('note', upTo(handoutLimits.note)) ?? '',
}));

const shape: Reader<Shape> = object(({ take, need }) => {
  need('format', oneOf(['weekwright-file']));
  need('version', whole(version, version));
  return {
    name: take('name', upTo(scenarioLimits.name)) ?? '',
    sheet: need('sheet', anything),
    onShow: take('onShow', text),
    running: take('running', orNull(whateverObject)) ?? null,
    strength: take('strength', orNull(whateverObject)) ?? null,
    checks: take('checks', orNull(whateverObject)) ?? null,
    record: take('record', recordReader) ?? [],
    handout: take('handout', handout) ?? noTexts,
  };
});

function readParts(document: unknown, method: Method): Outcome<PlanFile> {
  const problems: Problem[] = [];
  const read = readAs(shape, document, problems);
  if (!read || problems.length > 0) return { ok: false, problems };
  const { running, strength, checks, record, onShow } = read;
  const sheet = readScenarios(read.sheet, method);
  const parts = [
    running && readRunning(running),
    strength && readStrength(strength, strengthGround(method)),
    checks && readChecks(checks),
  ];
  const faults = [
    ...(sheet.ok ? unknownOnShow(sheet.value, onShow) : sheet.problems.map(inSheet)),
    ...parts.flatMap((part) => (part?.ok === false ? part.problems : [])),
    ...answersIn(checks),
    ...faultyRecordDates(record, 'record'),
  ];
  if (faults.length > 0 || !sheet.ok) return { ok: false, problems: faults };
  const value = { ...read, sheet: sheet.value, onShow: onShow ?? sheet.value.reference, record: inOrder(record) };
  return { ok: true, value };
}

const inSheet = (problem: Problem): Problem => ({
  ...problem,
  path: problem.path === '' ? 'sheet' : `sheet.${problem.path}`,
});

/** What somebody answered about their health is in no file; a file that has it was not written here. */
function answersIn(checks: object | null): Problem[] {
  if (!checks || !('answers' in checks)) return [];
  const value = Array.isArray(checks.answers) ? `list of ${checks.answers.length}` : typeof checks.answers;
  return [{ path: 'checks.answers', value, code: 'unknown-field', allowed: {} }];
}

function unknownOnShow({ scenarios }: ScenarioSheet, onShow: string | undefined): Problem[] {
  const choices = scenarios.map(({ id }) => id);
  if (onShow === undefined || choices.includes(onShow)) return [];
  return [{ path: 'onShow', value: onShow, code: 'not-one-of', allowed: { choices } }];
}
