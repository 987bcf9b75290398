import { describe, expect, test } from 'vitest';
import { covers, floors } from './floors.mjs';
import { importsOf, sourceFiles } from './imports.js';

type Floor = (typeof floors)[number];

const floorOf = (file: string): Floor | undefined =>
  floors.find(({ files }) => files.some((path) => covers(path, file)));

/** Why a floor may not import something, or nothing. */
function objection(floor: Floor, imported: string): string | undefined {
  if (imported.startsWith('shared/')) return undefined;
  const isFile = imported.startsWith('src/');
  if (!isFile) return floor.packages.some((name) => covers(name, imported)) ? undefined : `package ${imported}`;
  const name = floorOf(imported)?.name ?? 'no floor';
  return name === floor.name || floor.knows.includes(name) ? undefined : `${imported} of ${name}`;
}

/** The first circle of imports that a walk from `file` meets, as the files on it. */
function findCircle(file: string, path: readonly string[], done: Set<string>): readonly string[] | undefined {
  if (path.includes(file)) return [...path.slice(path.indexOf(file)), file];
  if (done.has(file)) return undefined;
  for (const next of importsOf(file).filter((each) => sourceFiles.includes(each))) {
    const circle = findCircle(next, [...path, file], done);
    if (circle) return circle;
  }
  done.add(file);
  return undefined;
}

describe('imports', () => {
  test('every file of src belongs to a floor', () => {
    expect(sourceFiles.filter((file) => !floorOf(file))).toEqual([]);
  });

  test.each(floors)('$name imports only from $knows and the packages $packages', (floor) => {
    const files = sourceFiles.filter((file) => floorOf(file) === floor);
    const objections = files.flatMap((file) =>
      importsOf(file)
        .flatMap((imported) => objection(floor, imported) ?? [])
        .map((reason) => `${file}: ${reason}`),
    );
    expect(objections).toEqual([]);
  });

  test('every imported file of src exists under the name it is imported by', () => {
    const missing = sourceFiles.flatMap((file) =>
      importsOf(file).filter((each) => each.startsWith('src/') && !sourceFiles.includes(each)),
    );
    expect(missing).toEqual([]);
  });

  test('there is no circle, types included', () => {
    const done = new Set<string>();
    const circles = sourceFiles.flatMap((file) => findCircle(file, [], done)?.join(' > ') ?? []);
    expect(circles.slice(0, 1)).toEqual([]);
  });
});
