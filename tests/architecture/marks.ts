import ts from 'typescript';

/** Every place in a source text where values are joined by a fixed colon, semicolon or comma, as it is written there. */
export function fixedMarks(source: string): readonly string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (joinsByMark(node)) found.push(node.getText().replaceAll(/\s+/g, ' '));
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile('source.ts', source, ts.ScriptTarget.Latest, true));
  return found;
}

// A mark of a language has a space behind it; one without is of a format: a clock, a path, a row of cells.
const begins = /^\s*[:;,،؛]\s/;
const ends = /[:;,،؛]\s+$/;
const isAlone = /^\s*[:;,،؛]\s*$/;

function joinsByMark(node: ts.Node): boolean {
  if (ts.isCallExpression(node)) return isJoin(node);
  if (ts.isBinaryExpression(node)) return isSum(node);
  return ts.isTemplateExpression(node) && !isStyle(node.parent) && isJoinedTemplate(node);
}

/** list.join('; ') */
function isJoin({ expression, arguments: [mark] }: ts.CallExpression): boolean {
  const isCalled = ts.isPropertyAccessExpression(expression) && expression.name.text === 'join';
  return (
    isCalled && mark !== undefined && ts.isStringLiteralLike(mark) && (begins.test(mark.text) || ends.test(mark.text))
  );
}

/** name + ': ' */
const isSum = ({ operatorToken, left, right }: ts.BinaryExpression): boolean =>
  operatorToken.kind === ts.SyntaxKind.PlusToken &&
  [left, right].some((side) => ts.isStringLiteralLike(side) && (begins.test(side.text) || ends.test(side.text)));

const isStyle = (node: ts.Node): boolean => ts.isTaggedTemplateExpression(node) && node.tag.getText() === 'css';

/** `${name}: ${value}`, with tags between or without; a heading's mark at the end as well. */
function isJoinedTemplate({ head, templateSpans }: ts.TemplateExpression): boolean {
  const pieces = templateSpans.map(({ literal }) => heard(literal.text));
  const last = pieces.at(-1) ?? '';
  return (
    pieces.some((piece) => begins.test(piece)) ||
    [heard(head.text), ...pieces.slice(0, -1)].some((piece) => ends.test(piece)) ||
    isAlone.test(last)
  );
}

/** What is no tag; a piece may begin or end within one. */
const heard = (markup: string): string =>
  markup
    .replaceAll(/<[^<>]*>/g, '')
    .replace(/^[^<>]*>/, '')
    .replace(/<[^<>]*$/, '');
