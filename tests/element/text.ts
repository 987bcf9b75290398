/** The text of a node in one line, without the styles that some browsers keep in it. */
export function collapsed(node: Node): string {
  return (node.textContent ?? '').replace(/\s+/g, ' ').trim();
}
