import { expect } from '@open-wc/testing';
import { contentIn } from '../../../src/element/link/page-link.js';
import { copiedHash } from '../copied-hash.js';
import { openSheet } from '../sheet/sheet-page.js';
import { openHandout, scene, type HandoutPage } from './handout-page.js';
import { choosesFile, fileText, savesPlan } from './files.js';
import { copiedTexts, withoutClipboard } from './saving.js';

async function copiesLink(page: HandoutPage): Promise<string> {
  const texts = await copiedTexts(async () => {
    await page.acts('Copy a link');
    await page.hearsBack(/link/);
  });
  expect(Object.keys(texts ?? {})).to.deep.equal(['text/plain']);
  return texts?.['text/plain'] ?? '';
}

/** The document in a link, as it is written. */
async function documentIn(href: string): Promise<Record<string, unknown>> {
  const content = await contentIn({ href, key: 'weekwright' });
  if (!content.ok || !content.value) throw new Error('there is nothing in the link');
  expect(content.value.version).to.equal(2);
  return JSON.parse(content.value.text) as Record<string, unknown>;
}

const goTo = (hash: string): void => {
  location.hash = hash;
};
afterEach(() => {
  history.replaceState(null, '', location.pathname + location.search);
});

const told = {
  name: 'Spring',
  running: { race: { metres: 10_000, seconds: 2700, date: null } },
  strength: { equipment: ['barbell'] },
  checks: { age: 47 },
  record: [{ date: '2026-11-30', category: 'slow', minutes: 40, effort: 3 }],
  handout: { runner: 'Anna', contact: 'Coach', note: 'Hello' },
};

async function openTold(panels = 'split running strength checks record handout'): Promise<HandoutPage> {
  const page = await openHandout(scene, panels);
  await choosesFile(page, fileText(told));
  return page.hearsBack('The plan from the file is open.');
}

describe('a link to a plan', () => {
  it('is copied, and has what a file has', async () => {
    const page = await openTold();
    const href = await copiesLink(page);
    expect(href).to.match(/#weekwright=2\.[\w-]+$/);
    expect([location.hash, page.message]).to.deep.equal(['', `The link is copied (${href.length} characters).`]);
    expect(await documentIn(href)).to.deep.equal(JSON.parse((await savesPlan(page)).text));
  });

  it('is opened with the page', async () => {
    const page = await openTold();
    const [href, file] = [await copiesLink(page), await savesPlan(page)];
    page.element.remove();
    goTo(new URL(href).hash);
    const other = await openHandout('hours="3"', 'split running strength checks record handout');
    await other.hearsBack('The plan comes from the link.');
    expect(JSON.parse((await savesPlan(other)).text)).to.deep.equal(JSON.parse(file.text));
    expect(other.element.plan?.inputs.hours).to.equal(7);
  });

  it('is opened where the page goes to it later, and what was open before comes back', async () => {
    const page = await openTold();
    const { hash } = new URL(await copiesLink(page));
    page.element.remove();
    const other = await openHandout('hours="3"', 'split running strength checks record handout');
    const events = await other.heard(async () => {
      goTo(hash);
      await other.hearsBack('The plan comes from the link.');
    });
    expect(events).to.have.length(1);
    expect([other.element.plan?.inputs.hours, other.typedIn('handout-name').value]).to.deep.equal([7, 'Spring']);
    await other.pressesIn('Back to what was open before');
    await other.until(() => other.element.plan?.inputs.hours === 3, 'what was before is back');
    expect(other.typedIn('handout-name').value).to.equal('');
  });

  it('that is the same as before is opened once', async () => {
    const page = await openTold();
    const { hash } = new URL(await copiesLink(page));
    goTo(hash);
    await page.hearsBack('The plan comes from the link.');
    await page.drag('hours', 5);
    page.element.requestUpdate();
    await page.answered();
    expect(page.element.plan?.inputs.hours).to.equal(5);
  });

  it('that is damaged, newer or of another method says so, and changes nothing', async () => {
    const page = await openHandout(`${scene}`);
    const { plan } = page.element;
    for (const [hash, says] of [
      ['#weekwright=2.AAAA', /damaged or incomplete/],
      ['#weekwright=3.AAAA', /newer version than the 2/],
      ['#weekwright=', /damaged or incomplete/],
    ] as const) {
      goTo(hash);
      await page.hearsBack(says);
      expect(page.message).to.match(/^The link cannot be opened; nothing was changed:/);
    }
    expect(page.element.plan).to.equal(plan);
  });

  it('for another planner on the page is none of this one', async () => {
    const page = await openTold();
    const href = await copiesLink(page);
    goTo(new URL(href).hash.replace('#weekwright=', '#weekwright-two='));
    await page.answered();
    expect(page.message).to.equal(`The link is copied (${href.length} characters).`);
  });

  it('that cannot be copied is shown, to be copied by hand', async () => {
    const page = await openTold();
    await withoutClipboard(async () => {
      await page.acts('Copy a link');
      await page.until(() => page.has('.handout .by-hand'), 'the link is shown');
    });
    const { value } = page.find<HTMLTextAreaElement>('.handout .by-hand');
    expect((await documentIn(value))['name']).to.equal('Spring');
  });
});

/** Texts that no compression makes short. */
const noise = (length: number): string => {
  let state = 1;
  return Array.from({ length }, () => {
    state = (state * 48_271) % 2_147_483_647;
    return String.fromCharCode(0x4e00 + (state % 20_000));
  }).join('');
};
const sessions = (count: number): object[] =>
  Array.from({ length: count }, (_, index) => ({
    date: new Date(Date.parse('2020-01-01') + index * 86_400_000).toISOString().slice(0, 10),
    category: ['slow', 'tempo', 'cross'][(index * index) % 3],
    minutes: 20 + ((index * 7919) % 97),
    effort: ((index * 104_729) % 21) / 2,
  }));

describe('a long link', () => {
  it('says how long it is, and that mail programs may cut it off', async () => {
    const page = await openHandout();
    await page.writeNote(noise(1000));
    const { length } = await copiesLink(page);
    expect(length).to.be.greaterThan(2000);
    expect(page.message).to.match(new RegExp(`${new Intl.NumberFormat('en').format(length)} characters.*2,000`));
  });

  it('that is too long is refused, and nothing is copied', async () => {
    const page = await openHandout();
    await choosesFile(page, fileText({ record: sessions(4000) }));
    await page.hearsBack('The plan from the file is open.');
    const texts = await copiedTexts(async () => {
      await page.acts('Copy a link');
      await page.hearsBack('The plan is too long for a link.');
    });
    expect(texts).to.equal(null);
    expect(page.message).to.match(/leave out what was done:.*too long; allowed: [\d,]+ at most/);
  });
});

describe('a link of the first version, a what-if sheet alone', () => {
  async function firstVersion(): Promise<string> {
    const sheet = await openSheet('hours="8" level="elite"');
    await sheet.add();
    await sheet.rename(1, 'Less');
    await sheet.set(1, 'hours', 6);
    const { reference } = sheet;
    expect(reference).to.equal(0);
    const { SeasonPage } = await import('../season/season-page.js');
    const hash = await copiedHash(new SeasonPage(sheet.element));
    expect(hash).to.match(/^#weekwright=1\./);
    sheet.element.remove();
    return hash;
  }

  it('opens without a sheet', async () => {
    goTo(await firstVersion());
    const page = await openHandout(scene);
    await page.hearsBack('The plan comes from the link.');
    expect([page.element.plan?.inputs.hours, page.element.plan?.inputs.level]).to.deep.equal([8, 'elite']);
  });

  it('opens beside a sheet once: the handout says so, the sheet nothing', async () => {
    goTo(await firstVersion());
    const page = await openHandout(scene, 'split sheet handout');
    await page.until(() => page.has('.grid'), 'the sheet comes');
    await page.hearsBack('The plan comes from the link.');
    await page.answered();
    expect(page.scenarios).to.have.length(2);
    expect(page.texts('.sheet .message')).to.deep.equal(['']);
    expect(page.all('.handout .act').filter((each) => each.textContent?.includes('Back to what'))).to.have.length(1);
    // One step to take back, no more.
    goTo('#weekwright=1.AAAA');
    await page.hearsBack('The link cannot be opened');
    expect(page.texts('.sheet .message')).to.deep.equal(['']);
  });
});

describe('what is told of the runner', () => {
  it('is in a link and a file until somebody leaves it out; then nothing of it is', async () => {
    const page = await (await openTold()).opensBox('content');
    const whole = await documentIn(await copiesLink(page));
    expect(whole).to.include.keys('running', 'strength', 'checks', 'record');
    expect(JSON.stringify(whole)).to.contain('Anna');
    await page.click(page.tickOf('content'));
    const bare = await documentIn(await copiesLink(page));
    expect(Object.keys(bare).sort()).to.deep.equal(['format', 'handout', 'name', 'sheet', 'version']);
    expect(bare['handout']).to.deep.equal({ contact: 'Coach', note: 'Hello' });
    expect(JSON.stringify(bare)).to.not.match(/Anna|2700|barbell|47|2026-11-30/);
    expect(JSON.parse((await savesPlan(page)).text)).to.deep.equal(bare);
    await page.click(page.tickOf('content'));
    expect(await documentIn(await copiesLink(page))).to.deep.equal(whole);
  });

  it('is listed before it is handed over', async () => {
    const page = await (await openTold()).opensBox('content');
    expect(page.content).to.deep.equal([
      'one scenario, with its days',
      'what is told of pace and heart rate',
      'what there is for strength',
      'what is told for checks: age, hours, loads',
      'one session that was done',
      'what is written on the handout',
    ]);
    await page.click(page.tickOf('content'));
    expect(page.content).to.deep.equal(['one scenario, with its days', 'what is written on the handout']);
  });
});
