import { parseSyntax } from '../../src/sheet/formula/parser.js';
import type { SyntaxNode } from '../../src/sheet/formula/syntax-tree.js';

/**
 * A formula as a spreadsheet writes it; `address` says where a name's cell is.
 *
 * @example spreadsheetFormula('a > 2 and b > 0 ? a : -b', upperCase) // '=IF(AND((A>2),(B>0)),A,(-B))'
 */
export function spreadsheetFormula(text: string, address: (name: string) => string): string {
  return `=${write(parseSyntax(text), address)}`;
}

function write(node: SyntaxNode, address: (name: string) => string): string {
  const all = (nodes: readonly SyntaxNode[]): string[] => nodes.map((each) => write(each, address));
  switch (node.type) {
    case 'ConstantNode':
      return String(node.value);
    case 'SymbolNode':
      return address(node.name);
    case 'ParenthesisNode':
      return write(node.content, address);
    case 'ConditionalNode':
      return call('if', all([node.condition, node.trueExpr, node.falseExpr]));
    case 'OperatorNode':
      return operation(node.op, all(node.args));
    case 'FunctionNode':
      return call(node.fn.type === 'SymbolNode' ? node.fn.name : '', all(node.args));
    default:
      throw new Error(`${node.type} is not in our benches`);
  }
}

function call(name: string, args: readonly string[]): string {
  return `${name.toUpperCase()}(${args.join(',')})`;
}

function operation(sign: string, args: readonly string[]): string {
  if (sign === 'and' || sign === 'or') return call(sign, args);
  return args.length === 1 ? `(${sign}${args.join()})` : `(${args.join(sign === '==' ? '=' : sign)})`;
}
