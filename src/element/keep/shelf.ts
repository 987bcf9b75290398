import { deleteDB, openDB, type IDBPDatabase } from 'idb';
import type { KeptPlan } from '../../exchange/kept-file.js';

/*
 * Plans that people keep on their device: in a database of the browser's, which is there only from the first plan that
 * somebody keeps to the wiping. Every act opens it and closes it again, so that nothing stands in the way of wiping.
 */

const database = 'weekwright';
const store = 'plans';
const version = 1;

/** All that is kept, by name; none, and no database, where nothing was ever kept. */
async function keptPlans(): Promise<readonly KeptPlan[]> {
  const opened = await open(false);
  if (!opened) return [];
  try {
    const all: unknown[] = await opened.getAll(store);
    return all.filter(isKept);
  } finally {
    opened.close();
  }
}

/** Keeps a plan, in place of one with the same name. */
async function keep(plan: KeptPlan): Promise<void> {
  const opened = await open(true);
  try {
    await opened?.put(store, plan);
  } finally {
    opened?.close();
  }
}

/** Takes one out; with the last one the database goes too. */
async function takeOut(name: string): Promise<void> {
  const opened = await open(false);
  if (!opened) return;
  try {
    await opened.delete(store, name);
    if ((await opened.count(store)) > 0) return;
  } finally {
    opened.close();
  }
  await wipe();
}

/** Wipes everything: the database itself is deleted. Waits until other pages of this site have let go of it. */
async function wipe(): Promise<void> {
  await deleteDB(database);
}

/** Opens the database; undefined where it is not there and is not to be made. */
async function open(mayCreate: boolean): Promise<IDBPDatabase | undefined> {
  if (!mayCreate && (await isKnownMissing())) return undefined;
  const found = { nothing: false };
  try {
    return await openDB(database, version, {
      upgrade: (...[made, oldVersion, , transaction]) => {
        found.nothing = oldVersion === 0 && !mayCreate;
        if (found.nothing) {
          // Nobody else waits for its end.
          transaction.done.catch(() => undefined);
          transaction.abort();
        } else made.createObjectStore(store, { keyPath: 'name' });
      },
    });
  } catch (error) {
    if (found.nothing) return undefined;
    throw error;
  }
}

/** What WebKit opens and gives up again stays behind, empty: where a browser has a list (Firefox since 126), that is read first. */
async function isKnownMissing(): Promise<boolean> {
  if (!('databases' in indexedDB)) return false;
  const listed = await indexedDB.databases();
  return !listed.some(({ name }) => name === database);
}

const isKept = (value: unknown): value is KeptPlan =>
  typeof value === 'object' &&
  value !== null &&
  'name' in value &&
  typeof value.name === 'string' &&
  'kept' in value &&
  typeof value.kept === 'string' &&
  'text' in value &&
  typeof value.text === 'string';

/** What can be done with the plans of this device. */
export const shelf = { keptPlans, keep, takeOut, wipe };
