import { expect } from '@open-wc/testing';
import { clock, paces, speedAt, shares, uptake } from './equations.js';
import { openRunning, scene, type RunningPage } from './running-page.js';

const byFeel = 'A race or a threshold pace gives paces and distances; until then runs go by feel.';
const kinds = ['slow', 'tempo', 'intervals'] as const;

/** The paces of all kinds are those of an uptake. */
function expectPaces(page: RunningPage, greatest: number): void {
  for (const kind of kinds) expect(page.paceOf(kind), kind).to.equal(`${paces(kind, greatest)} a kilometre`);
}

/** What the sentence of a run comes to in kilometres, slower and faster; all that is not work is run slowly. */
function kilometresOf(line: string, kind: keyof typeof shares, greatest: number): [number, number] {
  const [, warmUp = 0] = /Warm-up ([\d.]+) min/.exec(line) ?? [];
  const [, coolDown = 0] = /cool-down ([\d.]+) min/.exec(line) ?? [];
  const [, rest = 0] = /with ([\d.]+) minutes easy between/.exec(line) ?? [];
  const [, times = 1, work = 0] = /(?:(\d+) × )?([\d.]+) minutes at/.exec(line) ?? [];
  const easy = Number(warmUp) + Number(coolDown) + (Number(times) - 1) * Number(rest);
  const at = (end: 0 | 1): number =>
    (easy * speedAt(shares.slow[end], greatest) + Number(times) * Number(work) * speedAt(shares[kind][end], greatest)) /
    1000;
  return [at(0), at(1)];
}

async function withRace(): Promise<RunningPage> {
  const page = await (await openRunning()).chooseDistance('10 km');
  return page.typeIn('running-time', '45:00');
}

describe('a runner of whom nothing is known', () => {
  it('runs by feel: no pace, no distance, no times; every run is cut all the same', async () => {
    const page = await openRunning();
    expect([page.lead, page.running.basis, ...kinds.map((kind) => page.paceOf(kind))]).to.deep.equal([
      ...[byFeel, null, '', '', ''],
    ]);
    expect(page.has('.running-equal')).to.equal(false);
    expect(page.panelText).to.not.match(/\d km\b.*The runs of the week.*\d km\b/);
    expect(page.runHeads).to.deep.equal([
      ...['Slow running 35 min', 'Slow running 35 min', 'Tempo running 35 min', 'Intervals 25 min'],
    ]);
    expect(page.runLines[0]).to.equal('35 minutes so that whole sentences can be spoken.');
  });

  it('has no field for a time before a distance is chosen', async () => {
    const page = await openRunning();
    expect(['#running-time', '#running-date', '#running-kilometres'].map((id) => page.has(id))).to.deep.equal([
      ...[false, false, false],
    ]);
    await page.chooseDistance('10 km');
    expect(['#running-time', '#running-date'].map((id) => page.has(id))).to.deep.equal([true, false]);
    expect(page.typedIn('running-time').value).to.equal('');
  });
});

describe('a race and its time', () => {
  it('give paces by the printed equations, and the page hears of it once', async () => {
    const page = await (await openRunning()).chooseDistance('10 km');
    const { running } = await page.heardOnce(() => page.typeIn('running-time', '45:00'));
    expect(running).to.deep.equal(page.running);
    expect(running?.wishes.race).to.deep.equal({ metres: 10_000, seconds: 2700, date: null });
    expectPaces(page, uptake(10_000, 2700));
    expect(page.optionOf('running-distance')).to.equal('10 km');
  });

  it('give every run its kilometres, and the week its sum', async () => {
    const page = await withRace();
    const greatest = uptake(10_000, 2700);
    const runs = page.runLines.map((line, index) =>
      kilometresOf(line, (['slow', 'slow', 'tempo', 'intervals'] as const)[index] ?? 'slow', greatest),
    );
    const told = runs.map(([from, to]) => `${from.toFixed(1)} to ${to.toFixed(1)} km`);
    expect(page.runHeads.map((head) => /[\d.]+ to [\d.]+ km/.exec(head)?.[0])).to.deep.equal(told);
    const sum = ([0, 1] as const).map((end) => runs.reduce((all, run) => all + run[end], 0).toFixed(0)).join(' to ');
    const slow = paces('slow', greatest).replace('–', ' to ');
    expect(page.lead).to.equal(`Slow runs at ${slow} a kilometre: ${sum} km this week.`);
  });

  it('tell the pace and the metres of each bout', async () => {
    const page = await withRace();
    const greatest = uptake(10_000, 2700);
    const [from, to] = shares.intervals.map((share) => 10 * Math.round((3.5 * speedAt(share, greatest)) / 10));
    const pace = paces('intervals', greatest).replace('–', ' to ');
    expect(page.runLines[3]).to.equal(
      `Warm-up 7 minutes; 3 × 3.5 minutes at ${pace} a kilometre, ${String(from)} to ${String(to)} m each, ` +
        'with 2 minutes easy between; cool-down 3.5 minutes.',
    );
  });

  for (const [distance, metres, text, seconds] of [
    ['1,500 m', 1500, '6:01', 361],
    ['mile', 1609.344, '5:30', 330],
    ['3 km', 3000, '12:00', 720],
    ['half marathon', 21_097.5, '1:39:17', 5957],
    ['marathon', 42_195, '3:27:01', 12_421],
  ] as const)
    it(`${distance} in ${text}`, async () => {
      const page = await (await openRunning()).chooseDistance(distance);
      await page.typeIn('running-time', text);
      expectPaces(page, uptake(metres, seconds));
      expect(page.typedIn('running-time').value).to.equal(clock(seconds));
    });

  it('over another distance: the race is gone until its time is typed', async () => {
    const page = await withRace();
    await page.chooseDistance('5 km');
    expect([page.running.wishes.race, page.lead, page.typedIn('running-time').value]).to.deep.equal([null, byFeel, '']);
    expect(page.optionOf('running-distance')).to.equal('5 km');
    await page.heardOnce(() => page.typeIn('running-time', '21:00'));
    expectPaces(page, uptake(5000, 1260));
  });

  it('are gone with no race, and with no time', async () => {
    const page = await withRace();
    await page.chooseDistance('no race');
    expect([page.running.wishes.race, page.lead, page.has('#running-time')]).to.deep.equal([null, byFeel, false]);
    const other = await withRace();
    await other.typeIn('running-time', '');
    expect([other.running.wishes.race, other.lead, other.hintOf('running-time')]).to.deep.equal([null, byFeel, '']);
    expect(other.optionOf('running-distance')).to.equal('10 km');
  });

  it('stay when the hours change', async () => {
    const page = await withRace();
    const pace = page.paceOf('slow');
    await page.drag('hours', 6);
    expect([page.paceOf('slow'), page.running.wishes.race?.seconds]).to.deep.equal([pace, 2700]);
  });
});

describe('another distance', () => {
  it('by its kilometres', async () => {
    const page = await (await openRunning()).chooseDistance('another distance');
    expect([page.has('#running-kilometres'), page.has('#running-time')]).to.deep.equal([true, false]);
    await page.typeIn('running-kilometres', '12');
    expect([page.optionOf('running-distance'), page.has('#running-time')]).to.deep.equal(['another distance', true]);
    await page.heardOnce(() => page.typeIn('running-time', '54:00'));
    expectPaces(page, uptake(12_000, 3240));
    expect(page.typedIn('running-kilometres').value).to.equal('12');
  });

  it('can be changed, and waits for a time again', async () => {
    const page = await (await openRunning()).chooseDistance('another distance');
    await page.typeIn('running-kilometres', '12');
    await page.typeIn('running-time', '54:00');
    await page.typeIn('running-kilometres', '14');
    expect([page.running.wishes.race, page.typedIn('running-time').value]).to.deep.equal([null, '']);
    await page.typeIn('running-time', '1:03:00');
    expectPaces(page, uptake(14_000, 3780));
    await page.typeIn('running-kilometres', '');
    expect([page.has('#running-kilometres'), page.has('#running-time')]).to.deep.equal([true, false]);
  });

  it('of the page has its kilometres in a field', async () => {
    const page = await openRunning(`${scene} race="12.5km 1:02:30"`);
    expect(page.optionOf('running-distance')).to.equal('another distance');
    const typed = ['running-kilometres', 'running-time'].map((id) => page.typedIn(id).value);
    expect(typed).to.deep.equal(['12.5', '1:02:30']);
  });

  for (const text of ['far', '-3'])
    it(`"${text}" is no number of kilometres: it stays, and is told`, async () => {
      const page = await (await openRunning()).chooseDistance('another distance');
      await page.typeIn('running-kilometres', '0');
      await page.typeIn('running-kilometres', text);
      expect(page.typedIn('running-kilometres').value).to.equal(text);
      expect(page.typedIn('running-kilometres').ariaInvalid).to.equal('true');
      expect(page.hintOf('running-kilometres')).to.match(/^Kilometres of the race is /);
    });

  for (const text of ['0.3', '250'])
    it(`"${text}" kilometres are refused where they are typed, with what is allowed`, async () => {
      const page = await (await openRunning()).chooseDistance('another distance');
      await page.typeIn('running-kilometres', text);
      expect(page.has('#running-kilometres')).to.equal(true);
      // 800 metres to 100 kilometres: src/plan/running/wishes.ts.
      expect(page.hintOf('running-kilometres')).to.match(/^Kilometres of the race is .*0\.8 to 100\.$/);
    });

  it('does not lose the focus when its kilometres are entered', async () => {
    const page = await (await openRunning()).chooseDistance('another distance');
    await page.typeIn('running-kilometres', '12');
    expect(page.root.activeElement).to.not.equal(null);
  });
});

describe('a text that is no time', () => {
  for (const [text, says] of [
    ['soon', /a time such as 45:00 or 1:39:17\.$/],
    ['45', /a time such as 45:00 or 1:39:17\.$/],
    ['45:77', /a time such as 45:00 or 1:39:17\.$/],
    // 60 to 480 metres a minute are allowed: 10,000 / 480 minutes, 10,000 / 60 minutes.
    ['5:00', /"5:00"; allowed: 20:50 to 2:46:40\.$/],
    ['9:59:59', /"9:59:59"; allowed: 20:50 to 2:46:40\.$/],
  ] as const)
    it(`"${text}" stays with a sentence that is read out, and the last paces stay`, async () => {
      const page = await withRace();
      const before = page.running;
      const events = await page.heard(() => page.typeIn('running-time', text));
      expect([events, page.running]).to.deep.equal([[], before]);
      expectPaces(page, uptake(10_000, 2700));
      const field = page.typedIn('running-time');
      expect([field.value, field.ariaInvalid]).to.deep.equal([text, 'true']);
      expect(field.getAttribute('aria-describedby')?.split(' ')).to.include('running-time-hint');
      expect(page.hintOf('running-time')).to.match(says);
      expect(page.hintOf('running-time')).to.contain(`Its time is "${text}"`);
      expect(page.told).to.equal(page.hintOf('running-time'));
    });

  it('is forgotten with the next time', async () => {
    const page = await withRace();
    await page.typeIn('running-time', 'soon');
    await page.typeIn('running-time', '44:00');
    expect([page.hintOf('running-time'), page.told, page.typedIn('running-time').ariaInvalid]).to.deep.equal([
      ...['', '', 'false'],
    ]);
    expectPaces(page, uptake(10_000, 2640));
  });

  it('is forgotten with the distance that it was typed for', async () => {
    const page = await withRace();
    await page.typeIn('running-time', 'soon');
    await page.chooseDistance('5 km');
    expect([page.hintOf('running-time'), page.typedIn('running-time').value]).to.deep.equal(['', '']);
  });
});

describe('the day of a race', () => {
  const dayBefore = (days: number): string => {
    const now = new Date();
    return new Date(now.getFullYear(), now.getMonth(), now.getDate() - days).toLocaleDateString('sv-SE');
  };

  it('in the future is refused', async () => {
    const page = await withRace();
    await page.setDate('running-date', dayBefore(-1));
    expect(page.typedIn('running-date').value).to.equal(dayBefore(-1));
    expect(page.hintOf('running-date')).to.match(new RegExp(`^Day of the race is .*${dayBefore(0)} or earlier\\.$`));
    expect([page.told, page.running.wishes.race?.date]).to.deep.equal([page.hintOf('running-date'), null]);
  });

  it('today is taken, without a note', async () => {
    const page = await withRace();
    await page.heardOnce(() => page.setDate('running-date', dayBefore(0)));
    expect([page.running.wishes.race?.date, page.notes, page.hintOf('running-date')]).to.deep.equal([
      ...[dayBefore(0), [], ''],
    ]);
  });

  it('long ago is noted, and no longer when it is taken out', async () => {
    const page = await withRace();
    await page.setDate('running-date', dayBefore(200));
    expect(page.notes).to.deep.equal([
      'The race was 200 days ago: after more than 180 days its paces may fit no longer.',
    ]);
    await page.setDate('running-date', '');
    expect([page.notes, page.running.wishes.race?.date]).to.deep.equal([[], null]);
  });
});

it('a race that takes longer than the law of endurance was found for is noted', async () => {
  const page = await openRunning(`${scene} race="marathon 4:30:00"`);
  expect(page.notes[0]).to.equal(
    'A race of 4:30:00 is outside 3:30 to 3:50:00, for which times over other distances were found: take paces and times with care.',
  );
});
