import type { Column } from './column.js';
import type { CellError } from './errors.js';
import { isOperation, operandCount, operationCode } from './formula/operations.js';
import { isOfSharing, quantityOf } from './chains.js';
import { withoutNoise } from './numbers.js';
import { stepWidth, type ProgramCell } from './program.js';

const tokens = Object.keys(operationCode).filter(isOperation);
const tokenOf = (code: number): (typeof tokens)[number] =>
  tokens.find((token) => operationCode[token] === code) ?? 'max()';

/** Why a cell has no number: its own fault, or the quantity it depends on and that one's fault. Null where it has one. */
export function explainFailure(column: Column, id: string): CellError | null {
  if (Number.isFinite(column.value(id))) return null;
  const known = column.program.errors.get(id);
  if (known) return known;
  const register = column.registerOf(id);
  const cell = column.program.cells.find((each) => each.register === register || each.block?.writes.includes(register));
  if (!cell) return { code: 'not-a-number', operation: quantityOf(id) };
  return cell.block ? blockFailure(column, cell) : traceStep(column, cell, cell.end - stepWidth);
}

function blockFailure(column: Column, cell: ProgramCell): CellError {
  const failed = cell.reads.find((register) => !Number.isFinite(column.registers[register]));
  return failed === undefined ? { code: 'not-a-number', operation: cell.id } : dependsOn(column, failed, cell.id);
}

/** Follows the failed operand of a step back to the step, or the other cell, where the failure began. */
function traceStep(column: Column, cell: ProgramCell, step: number): CellError {
  const { steps } = column.program;
  const failed = operandsUsed(column, step).find((register) => !Number.isFinite(column.registers[register]));
  if (failed === undefined) return ownFailure(column, step);
  for (let earlier = step - stepWidth; earlier >= cell.start; earlier -= stepWidth)
    if (steps[earlier + 1] === failed) return traceStep(column, cell, earlier);
  return dependsOn(column, failed, cell.id);
}

function operandsUsed(column: Column, step: number): number[] {
  const { steps } = column.program;
  const [operation = 0, , a = 0, b = 0, c = 0] = steps.subarray(step, step + stepWidth);
  const token = tokenOf(operation);
  if (token !== 'if()') return [a, b, c].slice(0, operandCount(token));
  const condition = column.registers[a]!;
  return Number.isNaN(condition) ? [a] : [condition === 0 ? c : b];
}

/** What a step itself did wrong with operands that are in order. */
function ownFailure(column: Column, step: number): CellError {
  const token = tokenOf(column.program.steps[step]!);
  const [a = 0, b = 0] = operandsUsed(column, step).map((register) => column.registers[register]!);
  if (token === 'spare()') return { code: 'nothing-left', over: withoutNoise(-a) };
  const divides = token === '/' || token === '%';
  if (divides ? b === 0 : token === '^' && a === 0) return { code: 'division-by-zero' };
  const hasNoResult = token === 'sqrt()' || (token === '^' && Number.isNaN(a ** b));
  return hasNoResult ? { code: 'not-a-number', operation: token.replace('()', '') } : { code: 'too-large' };
}

function dependsOn(column: Column, register: number, reader: string): CellError {
  const [id = ''] = [...column.program.registers].find(([, each]) => each === register) ?? [];
  const cause = explainFailure(column, id) ?? { code: 'not-a-number', operation: id };
  // Stages of one quantity, and what a sharing has to give, are no dependency that a person would know.
  return isOfSharing(id) || quantityOf(id) === quantityOf(reader)
    ? cause
    : { code: 'depends-on', name: quantityOf(id), cause };
}
