// Where the browser for tests and pictures comes from, in this order:
//   1. CHROME_PATH;  2. an installed Chrome, Chromium or Edge;  3. on Linux x64, the Chromium inside @sparticuz/chromium.
// BROWSER_SOURCE=bundled goes straight to 3.
import {
  accessSync,
  constants,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  writeFileSync,
} from 'node:fs';
import { delimiter, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const { env } = process;
const modules = fileURLToPath(new URL('../../node_modules/', import.meta.url));

const commands = [
  'google-chrome-stable',
  'google-chrome',
  'chromium',
  'chromium-browser',
  'microsoft-edge-stable',
  'microsoft-edge',
];
const installed = {
  darwin: ['Google Chrome', 'Chromium', 'Microsoft Edge'].flatMap((name) =>
    ['/Applications', `${env.HOME}/Applications`].map((folder) => `${folder}/${name}.app/Contents/MacOS/${name}`),
  ),
  win32: [env.PROGRAMFILES, env['PROGRAMFILES(X86)'], env.LOCALAPPDATA]
    .filter(Boolean)
    .flatMap((folder) =>
      ['Google\\Chrome\\Application\\chrome.exe', 'Microsoft\\Edge\\Application\\msedge.exe'].map((path) =>
        join(folder, path),
      ),
    ),
  linux: (env.PATH ?? '').split(delimiter).flatMap((folder) => commands.map((command) => join(folder, command))),
};

function isExecutable(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** Unpacks the bundled Chromium with its own libraries; the package unpacks into the temporary folder of the system. */
async function unpack(folder) {
  const saved = { TMPDIR: env.TMPDIR, AWS_LAMBDA_JS_RUNTIME: env.AWS_LAMBDA_JS_RUNTIME };
  const fresh = mkdtempSync(`${folder}-`);
  Object.assign(env, { TMPDIR: fresh, AWS_LAMBDA_JS_RUNTIME: 'nodejs20.x' }); // the latter adds the libraries
  try {
    const { default: chromium } = await import('@sparticuz/chromium');
    await chromium.executablePath();
  } finally {
    for (const [name, value] of Object.entries(saved))
      if (value === undefined) delete env[name];
      else env[name] = value;
  }
  if (!existsSync(folder)) renameSync(fresh, folder);
}

/** On a machine without fonts or Chromium's libraries, those of the package are used. */
function completeMachine(folder) {
  const systemFolders = ['/usr/lib/x86_64-linux-gnu', '/lib/x86_64-linux-gnu', '/usr/lib64', '/lib64', '/usr/lib'];
  if (!systemFolders.some((path) => existsSync(`${path}/libnss3.so`))) env.LD_LIBRARY_PATH = `${folder}/al2023/lib`;
  if (existsSync('/usr/share/fonts') && readdirSync('/usr/share/fonts').length > 0) return;
  env.FONTCONFIG_FILE = `${folder}/fonts.conf`;
  writeFileSync(env.FONTCONFIG_FILE, `<fontconfig><dir>${folder}/fonts</dir></fontconfig>`);
}

async function bundled() {
  const { version } = JSON.parse(readFileSync(`${modules}@sparticuz/chromium/package.json`, 'utf8'));
  const folder = `${modules}.cache/chromium-${version}`;
  mkdirSync(`${modules}.cache`, { recursive: true });
  if (!existsSync(folder)) await unpack(folder);
  completeMachine(folder);
  return { executablePath: `${folder}/chromium`, isShell: true };
}

async function findChromium() {
  if (env.BROWSER_SOURCE !== 'bundled') {
    if (env.CHROME_PATH) return { executablePath: env.CHROME_PATH, isShell: false };
    const executablePath = (installed[process.platform] ?? installed.linux).find(isExecutable);
    if (executablePath) return { executablePath, isShell: false };
  }
  if (process.platform === 'linux' && process.arch === 'x64') return bundled();
  throw new Error('No Chrome, Chromium or Edge found. Install one, or set CHROME_PATH to its program file.');
}

/** Options for puppeteer-core's launch(). */
export async function chromiumLaunchOptions() {
  const { executablePath, isShell } = await findChromium();
  const isRoot = process.getuid?.() === 0;
  return {
    executablePath,
    headless: isShell ? 'shell' : true,
    // Else the browser takes its language from the machine, which may be no language at all.
    env: { ...env, LC_ALL: 'en_US.UTF-8' },
    args: [
      ...(isRoot || isShell ? ['--no-sandbox'] : []),
      '--disable-gpu',
      '--disable-dev-shm-usage',
      '--disable-background-networking',
      '--disable-component-update',
      '--no-first-run',
      '--force-color-profile=srgb',
      '--font-render-hinting=none',
      '--hide-scrollbars',
    ],
  };
}
