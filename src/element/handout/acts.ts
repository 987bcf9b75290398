import { calendarText } from '../../exchange/calendar/calendar-text.js';
import { writePlanFileText, writePlanLinkText } from '../../exchange/plan-file.js';
import { tableCsv, tableHtml, tableText, type TableBlock } from '../../exchange/table-text.js';
import type { PlanFile } from '../../plan/file/document.js';
import { seasonEvents, weekEvents, type EventGround } from '../../words/handout/calendar-events.js';
import { seasonTable, weekTable } from '../../words/handout/tables.js';
import { weekText } from '../../words/handout/week-text.js';
import { linkKey } from '../link/fragment.js';
import { copied, copyFormat } from '../parts/copied.js';
import { nowInCalendars, today } from '../today.js';
import { isWeek } from './handout-fields.js';
import type { HandoutView } from './handout-view.js';

import { papers } from './print/papers.js';
import { printSheet } from './print/print-frame.js';
import { fileName, saveAs, type Saved } from '../parts/save-as.js';
import { paperSheet } from './sheets/paper-sheet.js';
import { sheetStyles } from './sheets/sheet-styles.js';

/** Prints the sheet on show. */
export async function print(view: HandoutView, place: HTMLElement): Promise<void> {
  const { words, desk } = view;
  const isPrinted = await printSheet({
    place,
    content: paperSheet(view),
    styles: sheetStyles.map(({ cssText }) => cssText).join(''),
    paper: papers[desk.choices.paper],
    title: titleOf(view),
    language: words.language,
  });
  desk.say(isPrinted ? null : { key: 'handout.not-printed' });
}

/** Saves the sessions as a calendar file. */
export function saveCalendar(view: HandoutView): void {
  const { words, plan } = view;
  const ground = eventGround(view);
  const events =
    isWeek(view) || !plan.season
      ? weekEvents(words, ground, view.weeks(view.desk.choices.start))
      : seasonEvents(words, ground, { season: plan.season, weeks: view.weeks });
  // A calendar without events is none (RFC 5545, 3.6).
  if (events.length === 0) {
    view.desk.say({ key: 'handout.no-sessions' });
    return;
  }
  const text = calendarText({ name: titleOf(view), language: words.language, stamp: nowInCalendars(), events });
  save(view, { name: nameOf(view, 'ics'), type: 'text/calendar', text });
}

function eventGround({ method, told, desk }: HandoutView): EventGround {
  const { isTimed, usual, early } = desk.choices;
  return { method, told, name: desk.name, times: isTimed ? { usual, early } : null, contact: desk.texts.contact };
}

/** Copies the sheet as a table, for a mail or a spreadsheet. */
export async function copyTable(view: HandoutView): Promise<void> {
  const table = tableOf(view);
  const format = copyFormat(view.words);
  const text = tableText(table, format);
  const isCopied = await copied({ 'text/plain': text, 'text/html': tableHtml(table, format) });
  view.desk.say(isCopied ? { key: 'sheet.copied-table' } : { key: 'sheet.not-copied', text });
}

/** Saves the sheet as a table; the mark in front tells spreadsheets that it is UTF-8. */
export function saveTable(view: HandoutView): void {
  save(view, { name: nameOf(view, 'csv'), type: 'text/csv', text: `\uFEFF${tableCsv(tableOf(view))}` });
}

function tableOf(view: HandoutView): TableBlock {
  const { words, method, plan, told, weeks, desk } = view;
  if (!isWeek(view) && plan.season) return seasonTable(words, method, plan.season);
  const { start } = desk.choices;
  return weekTable(words, start, weekText(words, method, { week: weeks(start), told }));
}

/** Saves everything that a person has set. */
export function savePlan(view: HandoutView): void {
  const file = handedOver(view);
  if (file) save(view, { name: nameOf(view, 'json'), type: 'application/json', text: writePlanFileText(file) });
}

/** What some mail programs cut off. */
const shortLink = 2000;

/** Copies the address of the page with everything that a person has set in it. */
export async function copyLink(view: HandoutView): Promise<void> {
  const { desk, host } = view;
  const file = handedOver(view);
  if (!file) return;
  const { linkWith } = await import('../link/link.js');
  const place = { href: location.href, key: linkKey(host.id) };
  const link = await linkWith({ version: 2, text: writePlanLinkText(file) }, place);
  if (!link.ok) {
    desk.say({ key: 'handout.link-too-long', problems: link.problems });
    return;
  }
  const count = link.value.length;
  const key = count > shortLink ? 'handout.copied-long-link' : 'sheet.copied-link';
  const isCopied = await copied({ 'text/plain': link.value });
  desk.say(isCopied ? { key, values: { count } } : { key: 'sheet.not-copied', text: link.value });
}

/** What a file or a link takes along: without what is told of the runner where that is wished. */
export function handedOver({ desk }: HandoutView): PlanFile | null {
  const file = desk.collect();
  if (!file || !desk.choices.isBare) return file;
  const bare = { running: null, strength: null, checks: null, record: [] };
  return { ...file, ...bare, handout: { ...file.handout, runner: '' } };
}

function save({ desk }: HandoutView, saved: Saved): void {
  saveAs(saved);
  desk.say({ key: 'handout.saved', values: { name: saved.name }, copy: saved.text });
}

/** What a printed file, a calendar, a file is called. */
function titleOf({ words, desk }: HandoutView): string {
  return desk.name === '' ? words.say('handout.name') : desk.name;
}

function nameOf(view: HandoutView, ending: string): string {
  const { start } = view.desk.choices;
  return fileName([titleOf(view), isWeek(view) ? start : (view.plan.season?.wishes.date ?? today())], ending);
}
