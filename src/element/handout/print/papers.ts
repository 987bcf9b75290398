/** A size of paper with the margins that are left on it, in millimetres. */
export interface Paper {
  readonly id: 'a4' | 'letter';
  readonly width: number;
  readonly height: number;
}

export const papers = {
  a4: { id: 'a4', width: 210, height: 297 },
  letter: { id: 'letter', width: 215.9, height: 279.4 },
} as const satisfies Readonly<Record<string, Paper>>;
export type PaperId = keyof typeof papers;

const margin = { block: 13, inline: 15 } as const;
const pixelsInAMillimetre = 96 / 25.4;
/** Printers and browsers round, each in their own way. */
const slack = 0.985;

/** The room of a page within its margins, in CSS pixels. */
export const roomOn = ({ width, height }: Paper): { readonly width: number; readonly height: number } => ({
  width: (width - 2 * margin.inline) * pixelsInAMillimetre,
  height: (height - 2 * margin.block) * pixelsInAMillimetre * slack,
});

/** The rules of a document that is printed on a paper. */
export const pageRules = (paper: Paper): string =>
  `@page{size:${paper.width}mm ${paper.height}mm;margin:${margin.block}mm ${margin.inline}mm}` +
  `html,body{margin:0;padding:0;background:#fff}body{inline-size:${roomOn(paper).width}px}` +
  `.paper{padding:0}.paper .p-scroll{overflow:visible}.paper .page{break-after:page;break-inside:avoid}` +
  `.paper .page:last-child{break-after:auto}.paper .page+.page{margin:0;padding:0;border:0}`;

/** Countries whose printers have letter paper; the list of the Unicode CLDR (paperSize, supplemental data), from memory. */
const letterRegions: readonly string[] = 'BZ CA CL CO CR GT MX NI PA PH PR SV US VE'.split(' ');

/**
 * The paper that is usual where a language is spoken.
 *
 * @param languages of the person, the first first: the first with a region tells.
 * @example usualPaper(['en', 'en-US']) // 'letter'
 */
export function usualPaper(languages: readonly string[]): PaperId {
  const regions = languages.flatMap((language) => /-([A-Z]{2})\b/.exec(language)?.[1] ?? []);
  return regions[0] !== undefined && letterRegions.includes(regions[0]) ? 'letter' : 'a4';
}
