import { describe, expect, test } from 'vitest';
import evidence from '../../../shared/evidence/evidence.json' with { type: 'json' };
import method from '../../../shared/methods/default.json' with { type: 'json' };
import { builtInMethod } from '../../../src/training/method/built-in.js';

/*
 * The numbers of a season against those that were published, as they were read (most in the abstract); the numbers stand
 * here, not in the method. What is no published number is common practice or an assumption, and the method says so.
 */

const { season } = method;
const strength = builtInMethod.categories.find(({ id }) => id === 'strength');
const entry = (id: string) => evidence.find((each) => each.id === id);
/** Where a source was read, and that the numbers it is named for stand in what is said of it. */
const says = (id: string, ...numbers: readonly string[]): void => {
  for (const number of numbers) expect(`${id}: ${entry(id)?.claim}`).toContain(number);
};

describe('the season of the default method', () => {
  test('has a taper of two weeks that loses 41 to 60 % of the volume', () => {
    // C11, Bosquet et al. 2007, doi:10.1249/mss.0b013e31806010e0: two weeks, volume down by 41–60 %, exponentially.
    // C13, Wang et al. 2023, doi:10.1371/journal.pone.0282838: at most 21 days, 41–60 %.
    const { weeks, drop, least, most, status, sources } = season.taper;
    expect({ weeks, least, most, status }).toEqual({ weeks: 2, least: 0.41, most: 0.6, status: 'published' });
    expect(weeks * 7).toBeLessThanOrEqual(21);
    expect(drop).toBeGreaterThanOrEqual(0.41);
    expect(drop).toBeLessThanOrEqual(0.6);
    expect(sources).toEqual(expect.arrayContaining(['C11', 'C13']));
    says('C11', 'two weeks', '41 to 60 %');
    says('C13', '21 days', '41 to 60 %');
    // C12, Mujika and Padilla 2003, doi:10.1249/01.MSS.0000074448.73931.11: 4 to more than 28 days, 60–90 %.
    says('C12', '60 to 90 %');
  });

  test('rises by a tenth at most, which no trial founds, and has a look at what is above a fifth', () => {
    // C01, Buist et al. 2008, doi:10.1177/0363546507307505: a programme on the 10 % rule, 20.8 against 20.3 % injured.
    // C02, Nielsen et al. 2014, doi:10.2519/jospt.2014.5164: under 10, 10–30, over 30 %: no difference in all injuries.
    // C03, Damsted et al. 2018, Int J Sports Phys Ther 13(6):931: rises of 10 and 24 % alike.
    // C04, Damsted et al. 2019, J Orthop Sports Phys Ther 49(4):230: 20–60 % went with more injuries by day 21.
    const { share, look, status, sources } = season.rise;
    expect({ share, look, status }).toEqual({ share: 0.1, look: 0.2, status: 'common practice' });
    expect(sources).toEqual(['C01', 'C02', 'C03', 'C04']);
    says('C01', '10 %', '20.8 %', '20.3 %');
    says('C02', 'under 10, 10 to 30 and over 30 %', '1.59');
    says('C03', '10 and 24 %');
    says('C04', '20 to 60 %', 'day 21');
  });

  test('has no run above 110 % of the longest of the weeks before', () => {
    // C05, Schuster Brandt Frandsen et al. 2025, doi:10.1136/bjsports-2024-109380: over 110 % of the longest run of 30 days.
    const { most, weeks, status, sources } = season.single_run;
    expect({ most, weeks, status, sources }).toEqual({ most: 1.1, weeks: 4, status: 'published', sources: ['C05'] });
    expect(Math.abs(weeks * 7 - 30)).toBeLessThan(Math.abs((weeks + 1) * 7 - 30));
    says('C05', '110 %', '30 days', '1.64', '1.52', '2.28');
  });

  test('has easier weeks that are common practice: those asked were no runners', () => {
    // C18, Rogerson et al. 2024, doi:10.1186/s40798-024-00691-y: every 5.6 ± 2.3 weeks, of 6.4 days; less volume.
    // C19, Bell et al. 2023, doi:10.1186/s40798-023-00633-0: what an easier week is, by experts.
    const { every_weeks: every, status, sources } = season.easier;
    expect({ status, sources }).toEqual({ status: 'common practice', sources: ['C18', 'C19'] });
    expect(Math.abs(every - 5.6)).toBeLessThanOrEqual(2.3);
    says('C18', '5.6 weeks', '6.4 days', 'not runners');
  });

  test('keeps strength up with one or two sessions', () => {
    // A25, Spiering et al. 2021, doi:10.1519/JSC.0000000000003964: one session a week holds strength, two from 65 on.
    const { from, sessions, status, sources } = season.upkeep;
    expect({ from, status, sources }).toEqual({ from: 'taper', status: 'published', sources: ['A25'] });
    expect([1, 2]).toContain(sessions);
    says('A25', 'One strength session', 'two from 65 years');
    expect(strength?.session.typical).toBe(35); // an assumption
  });

  test('says that rest and the way back are assumptions', () => {
    // C14, C16, Mujika and Padilla 2000; C17, Neufer 1989: fitness falls within 2 to 4 weeks; none has shares to return by.
    expect([season.recovery.status, season.way_back.status]).toEqual(['assumption', 'assumption']);
    expect(season.way_back.sources).toEqual(['C14', 'C16', 'C17']);
    says('C14', 'less than four weeks');
    says('C16', 'more than four weeks');
    says('C17', 'two to four weeks');
  });

  test('comes back more slowly the longer a break was, and never above what was before', () => {
    const { steps } = season.way_back;
    steps.forEach(({ weeks, shares }, index) => {
      const before = steps[index - 1];
      expect(weeks).toBeGreaterThan(before?.weeks ?? 0);
      expect(shares[0]).toBeLessThan(before?.shares[0] ?? 1);
      expect([...shares].sort((one, other) => one - other)).toEqual(shares);
      expect(Math.max(...shares)).toBeLessThan(1);
    });
  });
});
