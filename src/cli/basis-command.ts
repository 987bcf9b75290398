import { foundations } from '../plan/basis/foundations.js';
import { checkRules } from '../plan/checks/checks-ground.js';
import type { Method } from '../training/method/document.js';
import { basisAreas, basisHeadline, differences } from '../words/basis/basis-lines.js';
import { headed } from '../words/joined.js';
import type { Words } from '../words/words.js';
import { listed, page } from './paragraphs.js';
import { plannerOf } from './planner-of.js';
import { printable } from './printable.js';
import { citationLines, reasonText } from './reason-text.js';
import { exitCodes, refuse, type Session } from './session.js';

/** `weekwright basis`: what every number and rule of a method rests on. */
export async function basisCommand(session: Session): Promise<number> {
  const planner = await plannerOf(session);
  if (!planner.ok) return refuse(session, planner.lines);
  const { io, options, speech } = session;
  const { method } = planner.value;
  if (options.json !== undefined) io.write(`${JSON.stringify(basisDocument(method), null, 2)}\n`);
  else io.write(printable(basisText(speech.words, method)));
  return exitCodes.done;
}

function basisDocument(method: Method): object {
  const { id, name } = method;
  const areas = foundations(method).map(({ area, list }) => ({
    id: area,
    foundations: list.map((each) => ({ ...each, sources: each.sources ?? [] })),
  }));
  return {
    ...{ format: 'weekwright-basis', version: 1, method: { id, name } },
    ...{ areas, differences: checkRules(method).differences },
  };
}

const basisText = (words: Words, method: Method): string =>
  page([
    basisHeadline(words, method),
    listed(
      words.say('basis.differences'),
      differences(words, method).map(({ name, text, sources }) =>
        [headed(words, name, text), ...citationLines(sources)].join('\n'),
      ),
    ),
    ...basisAreas(words, method).map(({ title, reasons }) => listed(title, reasons.map(reasonText))),
    words.say('caution.short'),
  ]);
