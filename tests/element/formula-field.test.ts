import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import type { FormulaFieldOptions } from '../../src/element/formula-field/formula-field-options.js';
import { FormulaField } from '../../src/element/formula-field/formula-field.js';
import { accessibleNames, accessibleNodes } from './accessibility-tree.js';
import { faultsOf } from './axe.js';
import { needs } from './instruments.js';
import { openPiece, words, type Piece } from './piece.js';
import { inScheme } from './scheme.js';
import { collapsed } from './text.js';

const names = [
  { id: 'weekly_hours', name: 'Hours a week' },
  { id: 'strength_share', name: 'Share of strength' },
  { id: 'strength_cap', name: 'Strength cap' },
  { id: 'slow_share', name: 'Share of slow running' },
] as const;

/** A field on a page of its own, which keeps the text and writes down what is done. */
class FieldPage {
  readonly piece: Piece;
  readonly done: string[] = [];
  #options: FormulaFieldOptions;

  constructor(piece: Piece, given: Partial<FormulaFieldOptions>) {
    this.piece = piece;
    const act = {
      input: (text: string) => {
        this.change({ text });
        this.done.push(`input ${text}`);
      },
      commit: () => this.done.push('commit'),
      cancel: () => this.done.push('cancel'),
    };
    this.#options = { id: 'formula', label: 'Formula', text: '', error: null, result: '', names, words, act, ...given };
  }

  async open(): Promise<this> {
    const field = new FormulaField(this.piece.element);
    await this.piece.show(() => field.render(this.#options));
    this.input.focus();
    this.input.setSelectionRange(this.input.value.length, this.input.value.length);
    return this;
  }

  change(options: Partial<FormulaFieldOptions>): void {
    this.#options = { ...this.#options, ...options };
    this.piece.element.requestUpdate();
  }

  get input(): HTMLInputElement {
    return this.piece.find('input');
  }

  /** What the list offers, the active one in brackets; null where it is closed. */
  get list(): string[] | null {
    const list = this.piece.find('[role="listbox"]');
    expect(this.input.ariaExpanded).to.equal(list.checkVisibility() ? 'true' : 'false');
    if (!list.checkVisibility()) return null;
    const active = this.input.getAttribute('aria-activedescendant');
    return this.piece.all('[role="option"]').map((option) => {
      expect(option.ariaSelected).to.equal(option.id === active ? 'true' : 'false');
      const id = option.querySelector('small')?.textContent ?? '';
      return option.id === active ? `[${id}]` : id;
    });
  }

  /** The text with a bar where the caret stands. */
  get text(): string {
    const { value, selectionStart } = this.input;
    return `${value.slice(0, selectionStart ?? 0)}|${value.slice(selectionStart ?? 0)}`;
  }

  get hasFocus(): boolean {
    return this.piece.root.activeElement === this.input;
  }
}

const openField = async (given: Partial<FormulaFieldOptions> = {}): Promise<FieldPage> =>
  new FieldPage(await openPiece(), given).open();

const faulty = {
  text: '2 * strenght_share',
  error: { position: 4, length: 14, reason: '“strenght_share” is not a known quantity (character 5)' },
} as const;

describe('typing a formula', () => {
  it('suggests the names that a word may stand for, and none between words', async () => {
    const page = await openField();
    await page.piece.type('2 * str');
    expect(page.list).to.deep.equal(['strength_share', 'strength_cap']);
    await page.piece.type(' ');
    expect(page.list).to.equal(null);
    expect(page.done.at(-1)).to.equal('input 2 * str ');
  });

  it('keeps every letter, however fast they come', async () => {
    const page = await openField();
    await page.piece.type('weekly_hours * strength_share + slow_share');
    expect(page.text).to.equal('weekly_hours * strength_share + slow_share|');
    expect(page.done).to.have.length(42);
  });

  it('goes round the list by arrows, the field itself being between its ends', async () => {
    const page = await openField();
    await page.piece.type('str');
    const seen: (string[] | null)[] = [];
    for (const key of ['ArrowDown', 'ArrowDown', 'ArrowDown', 'ArrowUp', 'ArrowUp']) {
      await page.piece.press(key);
      seen.push(page.list);
    }
    expect(seen).to.deep.equal([
      ['[strength_share]', 'strength_cap'],
      ['strength_share', '[strength_cap]'],
      ['strength_share', 'strength_cap'],
      ['strength_share', '[strength_cap]'],
      ['[strength_share]', 'strength_cap'],
    ]);
    expect(page.text).to.equal('str|');
  });

  for (const key of ['Enter', 'Tab'])
    it(`${key} takes the active name in place of the word, and stays in the field`, async () => {
      const page = await openField({ text: '2 * str + 1' });
      page.input.setSelectionRange(6, 6);
      await page.piece.type('r');
      await page.piece.press('Backspace', 'ArrowDown', 'ArrowDown', key);
      expect(page.text).to.equal('2 * strength_cap| + 1');
      expect(page.list).to.equal(null);
      expect(page.hasFocus).to.equal(true);
      expect(page.done.at(-1)).to.equal('input 2 * strength_cap + 1');
    });

  it('Enter commits where no name is active', async () => {
    const page = await openField();
    await page.piece.type('str');
    await page.piece.press('Enter');
    expect(page.done.slice(3)).to.deep.equal(['commit']);
    expect(page.list).to.equal(null);
  });

  it('Escape closes the list first, and then cancels', async () => {
    const page = await openField();
    await page.piece.type('str');
    await page.piece.press('Escape');
    expect(page.list).to.equal(null);
    expect(page.done).to.have.length(3);
    await page.piece.press('Escape');
    expect(page.done.slice(3)).to.deep.equal(['cancel']);
  });

  it('Tab leaves where no name is active, and the list closes', async () => {
    const page = await openField();
    const next = document.createElement('button');
    page.piece.element.after(next);
    await page.piece.type('str');
    await page.piece.press('Tab');
    expect(document.activeElement).to.equal(next);
    expect(page.hasFocus).to.equal(false);
    expect(page.list).to.equal(null);
    expect(page.done).to.have.length(3);
  });

  it('moving the caret closes the list', async () => {
    const page = await openField();
    await page.piece.type('str');
    await page.piece.press('ArrowLeft');
    expect(page.text).to.equal('st|r');
    expect(page.list).to.equal(null);
  });

  it('Alt and the arrow down open all names', async () => {
    const page = await openField({ text: '2 * ' });
    await sendKeys({ down: 'Alt' });
    await page.piece.press('ArrowDown');
    await sendKeys({ up: 'Alt' });
    expect(page.list).to.deep.equal(names.map(({ id }) => id));
    await page.piece.press('ArrowUp', 'Enter');
    expect(page.text).to.equal('2 * slow_share|');
  });

  it('takes names and acts that came after the last key', async () => {
    const page = await openField();
    await page.piece.type('str');
    page.change({ names: [{ id: 'strides', name: 'Strides' }] });
    await page.piece.settled();
    await page.piece.press('ArrowDown', 'Enter');
    expect(page.text).to.equal('strides|');
  });
});

describe('a formula by pointer', () => {
  it('takes a name that is pressed, and the field keeps the focus', async () => {
    const page = await openField();
    await page.piece.type('2 * str');
    const option = page.piece.all('[role="option"]')[1];
    if (!option) throw new Error('there is no second name');
    await page.piece.mouse(option);
    expect(page.text).to.equal('2 * strength_cap|');
    expect(page.hasFocus).to.equal(true);
    expect(page.list).to.equal(null);
  });

  it('opens and closes all names by its button', async () => {
    const page = await openField();
    const button = page.piece.find('.entry button');
    await page.piece.mouse(button);
    expect(page.list).to.deep.equal(names.map(({ id }) => id));
    expect(page.hasFocus).to.equal(true);
    await page.piece.mouse(button);
    expect(page.list).to.equal(null);
  });
});

describe('a formula that is wrong', () => {
  it('is shown again with the wrong piece marked and the reason, which describe the field', async () => {
    const { input, piece } = await openField(faulty);
    expect(input.ariaInvalid).to.equal('true');
    const note = piece.find(`#${input.getAttribute('aria-describedby') ?? ''}`);
    expect(collapsed(note)).to.equal('2 * strenght_share “strenght_share” is not a known quantity (character 5)');
    expect(piece.find('mark').textContent).to.equal('strenght_share');
  });

  it('is put right by the name that was probably meant', async () => {
    const page = await openField(faulty);
    page.change({ text: faulty.text, error: faulty.error });
    const button = page.piece.find('.formula-note button');
    expect(button.textContent).to.include('strength_share');
    await page.piece.mouse(button);
    expect(page.text).to.equal('2 * strength_share|');
    expect(page.hasFocus).to.equal(true);
  });

  const description = '2 * strenght_share “strenght_share” is not a known quantity (character 5)';

  it('describes the field by the wrong piece and the reason', async () => {
    const page = await openField(faulty);
    const field = page.piece.find('[role="combobox"]');
    const parts = (field.getAttribute('aria-describedby') ?? '').split(' ').map((id) => page.piece.find(`#${id}`));
    expect(parts.map(collapsed).join(' ')).to.equal(description);
  });

  needs('accessibleValues', () => {
    it('describes the field so to a screen reader', async () => {
      await openField(faulty);
      const [field] = await accessibleNodes(/^combobox$/);
      expect(field?.description).to.equal(description);
    });
  });

  it('offers nothing where no name is near', async () => {
    const { piece } = await openField({
      text: '2 *',
      error: { position: 3, length: 0, reason: 'the formula ends too soon' },
    });
    expect(piece.all('.formula-note button')).to.have.length(0);
    expect(piece.find('mark').getBoundingClientRect().width).to.be.greaterThan(8);
  });

  for (const width of [320, 1000])
    it(`takes no more room than one that is right, in ${String(width)} pixels`, async () => {
      const page = await openField({ text: faulty.text, result: '= 84 minutes' });
      page.piece.element.style.inlineSize = `${String(width)}px`;
      const before = page.piece.find('.formula').getBoundingClientRect().height;
      page.change(faulty);
      await page.piece.settled();
      expect(page.piece.find('.formula').getBoundingClientRect().height).to.equal(before);
    });
});

describe('a formula field for everybody', () => {
  async function openNames(): Promise<FieldPage> {
    const page = await openField({ text: 'str', result: '= 84 minutes' });
    await page.piece.type('e');
    await page.piece.press('ArrowDown');
    return page;
  }

  needs('accessibleValues', () => {
    it('has its value and its description in the accessibility tree', async () => {
      await openNames();
      const [field] = await accessibleNodes(/^combobox$/);
      expect([field?.value, field?.description]).to.deep.equal(['stre', '= 84 minutes']);
    });
  });

  it('has its names in the accessibility tree', async () => {
    const page = await openNames();
    expect(await accessibleNames(/^(?:combobox|listbox)$/)).to.deep.equal(['combobox: Formula', 'listbox: Quantities']);
    expect(page.piece.all('[role="option"]').map(collapsed)).to.deep.equal([
      'Share of strength strength_share',
      'Strength cap strength_cap',
    ]);
  });

  for (const scheme of ['light', 'dark'] as const)
    describe(`axe finds nothing, ${scheme}`, () => {
      inScheme(scheme);

      it('in a field with a result', async () => {
        const { piece } = await openField({ text: '1', result: '= 1 minute' });
        expect(await faultsOf(piece)).to.deep.equal([]);
      });

      it('in an open list', async () => {
        const { piece } = await openField();
        await piece.type('str');
        await piece.press('ArrowDown');
        expect(await faultsOf(piece)).to.deep.equal([]);
      });

      it('in an error', async () => {
        expect(await faultsOf((await openField(faulty)).piece)).to.deep.equal([]);
      });
    });

  it('has targets of 24 pixels and more', async () => {
    const { piece } = await openField(faulty);
    await piece.type(' s');
    for (const target of piece.all('[role="option"], button')) {
      const { width, height } = target.getBoundingClientRect();
      expect(Math.min(width, height), collapsed(target)).to.be.at.least(24);
    }
    expect(piece.all('[role="option"]')).to.have.length(4);
  });
});
