/** Why a cell has no number. */
export type CellError =
  | { readonly code: 'division-by-zero' }
  | { readonly code: 'not-a-number'; readonly operation: string }
  | { readonly code: 'too-large' }
  | { readonly code: 'nothing-left'; readonly over: number }
  | { readonly code: 'unknown-name'; readonly name: string }
  | { readonly code: 'circle'; readonly path: readonly string[] }
  | { readonly code: 'depends-on'; readonly name: string; readonly cause: CellError };
