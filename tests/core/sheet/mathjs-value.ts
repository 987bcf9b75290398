import type { ConditionalNode, FunctionNode, MathNode, OperatorNode, ParenthesisNode, RelationalNode } from 'mathjs';
import { parse } from 'mathjs/number';

type Scope = Readonly<Record<string, number>>;

/** The one function of formulas that mathjs does not have, and two that have a value of their own there (see below). */
const functions = {
  clamp: (value: number, least: number, most: number): number => Math.min(Math.max(value, least), most),
  min: Math.min,
  max: Math.max,
};

/**
 * mathjs's own value of a formula, as an oracle: parsed and evaluated by mathjs (number-only, its own settings).
 *
 * It is NaN where formulas, unlike mathjs, have an error, whatever mathjs makes of it afterwards:
 * - division by zero, and a remainder by zero (mathjs: Infinity, NaN, and the dividend itself);
 * - a root or a power that is no number, and numbers too large (mathjs: NaN and Infinity, which compare as false);
 * - a name without a number.
 * Parts that are not looked at may fail: the other branch, and what `and`, `or` and a chain of comparisons need no more.
 *
 * `min` and `max` are exact: mathjs's own give the first of the numbers that count as equal, a hair from the least.
 */
export function mathjsValue(text: string, scope: Scope): number {
  const tree = treeOf(text);
  return fails(tree, scope) ? NaN : valueOf(tree, scope);
}

const trees = new Map<string, MathNode>();

function treeOf(text: string): MathNode {
  const tree = trees.get(text) ?? parse(text);
  trees.set(text, tree);
  return tree;
}

function valueOf(node: MathNode, scope: Scope): number {
  const value: unknown = node.evaluate({ ...scope, ...functions });
  return Number(value);
}

const failsAny = (nodes: readonly MathNode[], scope: Scope): boolean => nodes.some((node) => fails(node, scope));
const isOperator = (node: MathNode): node is OperatorNode => node.type === 'OperatorNode';
const isConditional = (node: MathNode): node is ConditionalNode => node.type === 'ConditionalNode';
const isRelational = (node: MathNode): node is RelationalNode => node.type === 'RelationalNode';
const isParenthesis = (node: MathNode): node is ParenthesisNode => node.type === 'ParenthesisNode';
const isFunction = (node: MathNode): node is FunctionNode => node.type === 'FunctionNode';

function fails(node: MathNode, scope: Scope): boolean {
  if (isParenthesis(node)) return fails(node.content, scope);
  if (isConditional(node)) {
    const { condition, trueExpr, falseExpr } = node;
    return fails(condition, scope) || fails(valueOf(condition, scope) === 0 ? falseExpr : trueExpr, scope);
  }
  if (isRelational(node)) return chainFails(node, scope);
  if (isOperator(node)) return operatorFails(node, scope);
  if (isFunction(node) && failsAny(node.args, scope)) return true;
  return !Number.isFinite(valueOf(node, scope));
}

function operatorFails(node: OperatorNode, scope: Scope): boolean {
  const [first, second] = node.args;
  if (!first || !second) return failsAny(node.args, scope);
  if (node.fn === 'and' || node.fn === 'or') {
    if (fails(first, scope)) return true;
    const isSettled = (valueOf(first, scope) !== 0) === (node.fn === 'or');
    return !isSettled && fails(second, scope);
  }
  if (failsAny(node.args, scope)) return true;
  if ((node.fn === 'divide' || node.fn === 'mod') && valueOf(second, scope) === 0) return true;
  return !Number.isFinite(valueOf(node, scope));
}

function chainFails({ params, conditionals }: RelationalNode, scope: Scope): boolean {
  const signs: Readonly<Record<string, string>> = {
    smaller: '<',
    smallerEq: '<=',
    larger: '>',
    largerEq: '>=',
    equal: '==',
    unequal: '!=',
  };
  for (const [index, relation] of conditionals.entries()) {
    const [left, right] = [params[index], params[index + 1]];
    if (!left || !right) throw new Error('a chain has one part more than signs');
    if (fails(left, scope) || fails(right, scope)) return true;
    const holds = treeOf(`left ${signs[relation] ?? ''} right`);
    if (valueOf(holds, { left: valueOf(left, scope), right: valueOf(right, scope) }) === 0) return false;
  }
  return false;
}
