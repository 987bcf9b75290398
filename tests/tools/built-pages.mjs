import { readFileSync } from 'node:fs';
import { fileOf, typeOf } from './serve.mjs';

const watcher = '<script src="/pages/tests/browsers/watch.js"></script>';

/** A page of the project is under `/pages`, the built tag at the root and, as a copy would be, under `/elsewhere`. */
function addressOf(path) {
  const [, folder, rest] = /^(\/pages|\/elsewhere|)(\/.*)$/.exec(path) ?? [];
  const isTag = /^\/weekwright[\w.-]*$/.test(rest);
  return (folder === '/pages') === isTag ? undefined : rest;
}

/** Serves what is built as it is, with the watcher of tests/browsers in its pages, and nothing of the runner's own. */
export function builtPages() {
  return (context, next) => {
    const address = addressOf(context.path);
    const file = address && fileOf(address);
    if (!file) return next();
    const content = readFileSync(file);
    context.type = typeOf(file);
    context.body = file.endsWith('.html') ? String(content).replace('<title>', `${watcher}<title>`) : content;
    return undefined;
  };
}
