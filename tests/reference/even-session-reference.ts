import { byEvenness, firstTwelve, highestSum, isSumAllowed } from './session-reference.js';
import type { CuttingQuestion, Lists } from './session-reference.js';

/**
 * The same options for amounts too large for brute force, by dynamic programming over the three most even lists of each
 * sum and number. A list is its shortest session followed by a list of the rest, and putting the same session in front
 * of two lists leaves their order of evenness as it was: so the three best are among the three best of each rest.
 */
export function optionsByEvenLists(question: CuttingQuestion): Lists {
  if (question.parts === 0 || question.rounded === 0) return [];
  const table = tableFor(question);
  const contenders: Lists[] = [];
  for (let sum = highestSum(question); sum > 0 && isSumAllowed(sum, question); sum -= 5) {
    for (let count = Math.ceil(sum / question.longest); count * question.shortest <= sum; count += 1) {
      contenders.push(table.mostEven({ count, sum, shortest: question.shortest }));
    }
  }
  return firstTwelve(contenders.flat(), question);
}

interface Cut {
  readonly count: number;
  readonly sum: number;
  readonly shortest: number;
}

class EvenLists {
  readonly #longest: number;
  readonly #known = new Map<string, Lists>();

  constructor(longest: number) {
    this.#longest = longest;
  }

  mostEven(cut: Cut): Lists {
    const key = `${String(cut.count)} ${String(cut.sum)} ${String(cut.shortest)}`;
    const known = this.#known.get(key);
    if (known) return known;
    const lists = [...this.#everyStart(cut)].sort(byEvenness).slice(0, 3);
    this.#known.set(key, lists);
    return lists;
  }

  *#everyStart({ count, sum, shortest }: Cut): Generator<readonly number[]> {
    if (count === 1 && sum >= shortest && sum <= this.#longest) yield [sum];
    if (count === 1) return;
    for (let first = shortest; first <= this.#longest && first * count <= sum; first += 5) {
      const rests = this.mostEven({ count: count - 1, sum: sum - first, shortest: first });
      for (const rest of rests) yield [first, ...rest];
    }
  }
}

const tables = new Map<number, EvenLists>();

/** One table for each longest session: it holds for any amount. */
function tableFor({ longest }: CuttingQuestion): EvenLists {
  const table = tables.get(longest) ?? new EvenLists(longest);
  tables.set(longest, table);
  return table;
}
