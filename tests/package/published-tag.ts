import { readFileSync } from 'node:fs';
import { installed } from './install.js';

interface Item {
  readonly name: string;
  readonly description?: string;
  readonly type?: { readonly text: string };
}

interface Member extends Item {
  readonly kind: string;
  readonly privacy?: string;
  readonly readonly?: boolean;
}

interface Declaration extends Item {
  readonly tagName?: string;
}

interface Tag extends Declaration {
  readonly attributes: readonly Item[];
  readonly members: readonly Member[];
  readonly events: readonly Item[];
  readonly slots: readonly Item[];
  readonly cssParts: readonly Item[];
  readonly cssProperties: readonly Item[];
}

export interface Manifest {
  readonly modules: readonly { readonly path: string; readonly declarations: readonly Declaration[] }[];
}

const isTag = (declaration: Declaration): declaration is Tag => declaration.tagName !== undefined;

/** A file of the package as its text says. */
export const readInstalled = <Content>(file: string): Content =>
  JSON.parse(readFileSync(installed + file, 'utf8')) as Content;

/** What the published manifest says of the tag. */
export function publishedTag(): Tag {
  const { modules } = readInstalled<Manifest>('dist/custom-elements.json');
  const tag = modules.flatMap(({ declarations }) => declarations).find(isTag);
  if (!tag) throw new Error('the manifest has no tag');
  return tag;
}

export const isPublicField = ({ kind, privacy = 'public' }: Member): boolean =>
  kind === 'field' && privacy === 'public';

/** Names of the properties that a page may set. */
export const settableProperties = (): string[] =>
  publishedTag()
    .members.filter((member) => isPublicField(member) && member.readonly !== true)
    .map(({ name }) => name);
