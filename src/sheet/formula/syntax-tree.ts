/** The part of mathjs's syntax tree that the compiler understands. Other kinds of node never leave the parser. */
export type SyntaxNode =
  | { readonly type: 'ConstantNode'; readonly value: unknown }
  | { readonly type: 'SymbolNode'; readonly name: string }
  | { readonly type: 'ParenthesisNode'; readonly content: SyntaxNode }
  | {
      readonly type: 'OperatorNode';
      readonly op: string;
      readonly args: readonly SyntaxNode[];
      readonly implicit: boolean;
    }
  | {
      readonly type: 'ConditionalNode';
      readonly condition: SyntaxNode;
      readonly trueExpr: SyntaxNode;
      readonly falseExpr: SyntaxNode;
    }
  | {
      readonly type: 'RelationalNode';
      readonly conditionals: readonly string[];
      readonly params: readonly SyntaxNode[];
    }
  | { readonly type: 'FunctionNode'; readonly fn: SyntaxNode; readonly args: readonly SyntaxNode[] };
