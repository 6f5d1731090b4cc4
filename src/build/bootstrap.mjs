/**
 * Makes a fresh clone ready: packages, and with --browser a Chromium. Runs before `npm start`, `npm test` and
 * `npm run handful` with Node built-ins alone. All that it says goes to stderr, so that stdout stays the command's own.
 */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { findBrowser } from './find-browser.mjs';
import { packagesMatch } from './packages-match.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Runs a command with its output on stderr and no input; whether it ended well. */
function run(command, args, env = {}) {
  console.error(`> ${command} ${args.join(' ')}`);
  const { status } = spawnSync(command, args, {
    cwd: root,
    stdio: ['ignore', 2, 2],
    env: { ...process.env, ...env },
    shell: process.platform === 'win32',
  });
  return status === 0;
}

function stop(sentence) {
  console.error(sentence);
  process.exit(1);
}

function installPackages() {
  if (packagesMatch(root)) return;
  console.error('Installing the packages that package-lock.json lists.');
  if (!run('npm', ['ci', '--no-audit', '--no-fund'])) {
    stop('The packages could not be installed: npm ci failed, its words are above.');
  }
}

function isDebianRoot() {
  return process.platform === 'linux' && process.getuid?.() === 0 && existsSync('/usr/bin/apt-get');
}

/** By Debian's own packages; the headless shell is the lighter, and not every release has it. */
function installByApt() {
  const quiet = { DEBIAN_FRONTEND: 'noninteractive' };
  const install = (name) =>
    run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', name], quiet) &&
    findBrowser() !== undefined;
  return (
    run('apt-get', ['update', '-qq'], quiet) && (install('chromium-headless-shell') || install('chromium'))
  );
}

function installBrowser() {
  if (isDebianRoot() && installByApt()) return;
  if (run('npx', ['playwright', 'install', 'chromium']) && findBrowser() !== undefined) return;
  stop(
    'No Chromium was found and none could be installed: install Chromium, Chrome or Edge, or name one in HANDFUL_BROWSER.',
  );
}

installPackages();
if (process.argv.includes('--browser') && findBrowser() === undefined) {
  console.error('Installing a Chromium for the tests that use a real browser.');
  installBrowser();
}
