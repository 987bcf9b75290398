import type { Planner } from '../../plan/planner.js';
import { createPlanner } from '../../plan/create-planner.js';
import type { Outcome, Problem } from '../../problem.js';

/** Where a page has put a coach's method: plain data, the text of a script child, or an address of its own. */
export type MethodSource =
  | { readonly kind: 'data'; readonly document: unknown }
  | { readonly kind: 'script'; readonly text: string }
  | { readonly kind: 'address'; readonly address: string };

/** The planner of the method at a source, or what is wrong with the source or with the method. */
export async function planFrom(source: MethodSource): Promise<Outcome<Planner>> {
  switch (source.kind) {
    case 'data':
      return createPlanner(source.document);
    case 'script':
      return parsed('script', source.text);
    case 'address':
      return fetched(source.address);
  }
}

const fault = (problem: Problem): Outcome<Planner> => ({ ok: false, problems: [problem] });

async function parsed(path: string, text: string): Promise<Outcome<Planner>> {
  try {
    return await createPlanner(JSON.parse(text));
  } catch (error) {
    if (!(error instanceof SyntaxError)) throw error;
    const value = text.trim().slice(0, 40);
    return fault({ path, value, code: 'not-json', allowed: { message: error.message } });
  }
}

/** Only addresses of the page's own origin are read: a page cannot be made to tell another site that it was opened. */
async function fetched(address: string): Promise<Outcome<Planner>> {
  const path = 'method-src';
  const url = URL.canParse(address, document.baseURI) ? new URL(address, document.baseURI) : null;
  if (url?.origin !== location.origin)
    return fault({ path, value: address, code: 'other-origin', allowed: { origin: location.origin } });
  const response = await fetch(url, { redirect: 'error' }).catch(() => null);
  if (!response?.ok)
    return fault({ path, value: address, code: 'unreachable', allowed: { status: response?.status ?? 0 } });
  return parsed(path, await response.text());
}
