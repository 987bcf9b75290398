import {
  createConditionalNode,
  createConstantNode,
  createFunctionNode,
  createNode,
  createOperatorNode,
  createParenthesisNode,
  createParse,
  createRelationalNode,
  createSymbolNode,
} from 'mathjs/number';
import type { SyntaxNode } from './syntax-tree.js';

/*
 * mathjs's parser with the seven node kinds a formula may have. The other eight are classes that cannot be made, so
 * arrays, ranges, objects, property access, assignment, function definitions, indices and blocks are refused while
 * parsing: no formula gets as far as a JavaScript property.
 */
class RefusedNode {
  constructor() {
    throw new SyntaxError('not allowed in a formula');
  }
}

const math = {};
const Node = createNode({ mathWithTransform: math });
const SymbolNode = createSymbolNode({ math, Node });

// mathjs dispatches on argument types through `typed`; the parser is only ever called with a text.
const typed = Object.assign((_name: string, signatures: Readonly<Record<string, unknown>>) => signatures['string'], {
  addConversion: () => undefined,
});

/**
 * The syntax tree of a formula.
 *
 * @throws {SyntaxError} where the text is no formula; `char`, counted from 1, says where.
 */
export const parseSyntax: (text: string) => SyntaxNode = createParse({
  typed,
  numeric: Number,
  config: { number: 'number' },
  ConditionalNode: createConditionalNode({ Node }),
  ConstantNode: createConstantNode({ Node, isBounded: Number.isFinite }),
  FunctionNode: createFunctionNode({ math, Node, SymbolNode }),
  OperatorNode: createOperatorNode({ Node }),
  ParenthesisNode: createParenthesisNode({ Node }),
  RelationalNode: createRelationalNode({ Node }),
  SymbolNode,
  AccessorNode: RefusedNode,
  ArrayNode: RefusedNode,
  AssignmentNode: RefusedNode,
  BlockNode: RefusedNode,
  FunctionAssignmentNode: RefusedNode,
  IndexNode: RefusedNode,
  ObjectNode: RefusedNode,
  RangeNode: RefusedNode,
});
