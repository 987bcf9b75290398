// These factories are exported by mathjs 15.2.0 at run time and missing from its types.
declare module 'mathjs/number' {
  type Factory = (dependencies: Readonly<Record<string, unknown>>) => unknown;
  export const createNode: Factory;
  export const createConstantNode: Factory;
  export const createConditionalNode: Factory;
  export const createFunctionNode: Factory;
  export const createOperatorNode: Factory;
  export const createParenthesisNode: Factory;
  export const createRelationalNode: Factory;
  export const createSymbolNode: Factory;
  export const createParse: (
    dependencies: Readonly<Record<string, unknown>>,
  ) => (text: string) => import('./syntax-tree.js').SyntaxNode;
}
