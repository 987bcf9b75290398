import { describe, expect, test } from 'vitest';
import type { PlanFile } from '../../../../src/plan/file/document.js';
import { writePlanFile } from '../../../../src/plan/file/write-plan-file.js';
import { writeScenarios } from '../../../../src/plan/scenarios/write-scenarios.js';
import { fileOf, smallestFile, wholeFile } from './file-documents.js';

const whole = fileOf(wholeFile());
const smallest = fileOf(smallestFile());
const written = (fields: Partial<PlanFile>): object => writePlanFile({ ...smallest, ...fields });
const bare = { format: 'weekwright-file', version: 1, sheet: writeScenarios(smallest.sheet) };

describe('what is written of a plan', () => {
  test('is every field of it', () => {
    expect(writePlanFile(whole)).toStrictEqual({ ...wholeFile(), sheet: writeScenarios(whole.sheet) });
  });

  test('is no part that is empty', () => {
    expect(writePlanFile(smallest)).toStrictEqual(bare);
    expect(written({ running: {}, strength: {}, checks: {} })).toStrictEqual(bare);
  });

  test('is no request in which nothing is told, and no field that is not', () => {
    expect(written({ running: { age: undefined }, strength: { minutes: undefined } })).toStrictEqual(bare);
    expect(written({ running: { age: 41, weight: undefined } })).toStrictEqual({ ...bare, running: { age: 41 } });
  });

  test('is the scenario on show where it is not the reference', () => {
    expect(writePlanFile({ ...whole, onShow: 'b' })).not.toHaveProperty('onShow');
    expect(writePlanFile({ ...whole, onShow: 'a' })).toMatchObject({ onShow: 'a' });
  });

  test.each(['runner', 'contact', 'note'] as const)('is one text of a handout alone: %s', (field) => {
    const handout = { runner: '', contact: '', note: '', [field]: 'a' };
    expect(written({ handout })).toStrictEqual({ ...bare, handout: { [field]: 'a' } });
  });
});

describe('answers to the questions before the start', () => {
  test('are never written, whoever hands them over', () => {
    const told = { age: 41, answers: ['symptoms'] };
    expect(written({ checks: told })).toStrictEqual({ ...bare, checks: { age: 41 } });
    const alone: object = { answers: ['symptoms'] };
    expect(written({ checks: alone })).toStrictEqual(bare);
  });
});
