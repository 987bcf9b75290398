import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, readdirSync, rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** A folder where `weekwright` resolves to the package as npm would publish it. */
export const consumer = `${root}node_modules/.cache/consumer/`;
export const installed = `${consumer}node_modules/weekwright/`;

/** Before the tests of the package: packs what `npm run build` made, and unpacks it as an installation would. */
export default function installPackage(): void {
  rmSync(consumer, { recursive: true, force: true });
  mkdirSync(installed, { recursive: true });
  execFileSync('npm', ['pack', '--silent', '--pack-destination', consumer], { cwd: root });
  const [archive] = readdirSync(consumer).filter((file) => file.endsWith('.tgz'));
  execFileSync('tar', ['-xzf', `${consumer}${String(archive)}`, '-C', installed, '--strip-components=1']);
  cpSync(`${root}tests/package/consumer`, consumer, { recursive: true });
}
