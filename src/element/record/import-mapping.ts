import { html, nothing, type TemplateResult } from 'lit';
import { live } from '../parts/live.js';
import { kindKey, kindsIn } from '../../exchange/record/kinds-in.js';
import { dateOrders, fieldIds, type Field, type Mapping, type TimeStyle } from '../../exchange/record/mapping.js';
import { categoryIds } from '../../training/method/ids.js';
import { categoryTitle } from '../../words/category-name.js';
import type { RecordView } from './record-view.js';

const timeStyles = ['minutes', 'hours', 'hms', 'ms'] as const satisfies readonly TimeStyle[];

/** Which column tells what, how dates and times are meant, and what each text of a kind is. */
export function importMapping(view: RecordView): TemplateResult {
  const { words, desk } = view;
  const { mapping, table } = desk.tables;
  if (!mapping || !table) return html``;
  return html`<fieldset class="import-mapping">
    <legend>${words.say('record.in.mapping')}</legend>
    <div class="concrete-inputs">
      ${fieldIds.map((field) => columnField(view, { field, mapping, head: table.head }))}
      ${select({
        label: words.say('record.in.dates'),
        choices: dateOrders.map((each) => ({ value: each, text: words.say(`record.in.dates.${each}`) })),
        value: mapping.dates,
        set: (dates) => {
          desk.tables.map({ dates });
        },
      })}
      ${select({
        label: words.say('record.in.times'),
        choices: timeStyles.map((each) => ({ value: each, text: words.say(`record.in.times.${each}`) })),
        value: mapping.times,
        set: (times) => {
          desk.tables.map({ times });
        },
      })}
    </div>
    ${mapping.columns.category === null ? nothing : kindFields(view, mapping)}
  </fieldset>`;
}

interface SelectOptions<T> {
  readonly label: string;
  readonly choices: readonly { readonly value: T; readonly text: string }[];
  readonly value: T;
  readonly set: (value: T) => void;
}

const select = <T>({ label, choices, value, set }: SelectOptions<T>): TemplateResult =>
  html`<label class="import-select"
    >${label}
    <select
      @change=${({ currentTarget }: Event) => {
        const chosen = currentTarget instanceof HTMLSelectElement ? choices[currentTarget.selectedIndex] : undefined;
        if (chosen) set(chosen.value);
      }}
    >
      ${choices.map((each) => html`<option .selected=${live(each.value === value)}>${each.text}</option>`)}
    </select></label
  >`;

interface ColumnOptions {
  readonly field: Field;
  readonly mapping: Mapping;
  readonly head: readonly string[];
}

function columnField({ words, desk }: RecordView, { field, mapping, head }: ColumnOptions): TemplateResult {
  const columns = head.map((title, column) => ({
    value: column,
    text: title === '' ? words.say('record.in.column', { number: column + 1 }) : title,
  }));
  return select<number | null>({
    label: words.say(`record.in.field.${field}`),
    choices: [{ value: null, text: words.say('record.in.no-column') }, ...columns],
    value: mapping.columns[field],
    set: (column) => {
      desk.tables.map({ columns: { ...mapping.columns, [field]: column } });
    },
  });
}

/** A table may have anything in a column that is no column of kinds. */
const mostKinds = 60;

function kindFields({ words, method, desk }: RecordView, mapping: Mapping): TemplateResult {
  const { table } = desk.tables;
  const kinds = table && mapping.columns.category !== null ? kindsIn(table, mapping.columns.category) : [];
  const titles = categoryIds.map((id) => ({ value: id, text: categoryTitle(words, method, id) }));
  return html`<p class="hint">${words.say('record.in.kinds')}</p>
    <div class="concrete-inputs">
      ${kinds.slice(0, mostKinds).map((text) => {
        const key = kindKey(text);
        return select({
          label: text,
          choices: [{ value: null, text: words.say('record.in.no-kind') }, ...titles],
          value: Object.hasOwn(mapping.kinds, key) ? (mapping.kinds[key] ?? null) : null,
          set: (kind) => {
            desk.tables.map({ kinds: { ...mapping.kinds, [key]: kind } });
          },
        });
      })}
    </div>
    ${kinds.length > mostKinds ? html`<p class="hint">${words.say('record.in.more-kinds', { count: kinds.length - mostKinds })}</p>` : nothing}`;
}
