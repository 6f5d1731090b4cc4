/**
 * `npm test`: all that must hold, in one go. Lint, dead code, types, generated files; unit and property tests; then the
 * built page in a real browser. Everything runs even if something before it failed. The last line counts checks and tests.
 */
import { mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { countPlaywright, countVitest } from './count-tests.mjs';
import { runCommand } from './run-command.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const reports = join(root, '.cache/reports');
rmSync(reports, { recursive: true, force: true });
mkdirSync(reports, { recursive: true });

const total = { passed: 0, failed: 0, skipped: 0 };

function report(name, count, ms) {
  total.passed += count.passed;
  total.failed += count.failed;
  total.skipped += count.skipped;
  const skipped = count.skipped > 0 ? `, skipped ${count.skipped}` : '';
  const what = `passed ${count.passed}, failed ${count.failed}${skipped}`;
  console.log(`${count.failed === 0 ? 'ok  ' : 'FAIL'} ${name}: ${what} (${(ms / 1000).toFixed(1)} s)`);
  for (const failure of count.failures) console.log(`  ${failure}`);
}

/** A check passes or fails as one; what it said is shown where it failed. */
async function check(name, command) {
  const { exitCode, log, ms } = await runCommand(root, command);
  const lines = log.trimEnd().split('\n').slice(0, 60).join('\n    ');
  const count = exitCode === 0 ? { passed: 1, failed: 0 } : { passed: 0, failed: 1 };
  report(name, { ...count, skipped: 0, failures: exitCode === 0 ? [] : [lines] }, ms);
  return exitCode === 0;
}

async function unitTests() {
  const file = join(reports, 'vitest.json');
  const command = ['vitest', 'run', '--reporter=json', `--outputFile=${file}`];
  const { exitCode, log, ms } = await runCommand(root, command);
  report('unit and property tests', countVitest(file, exitCode, log, root), ms);
}

async function browserTests() {
  const file = join(reports, 'playwright.json');
  const command = ['playwright', 'test', '--reporter=json'];
  const { exitCode, log, ms } = await runCommand(root, command, { PLAYWRIGHT_JSON_OUTPUT_FILE: file });
  report('browser tests', countPlaywright(file, exitCode, log), ms);
}

const typeCheck = (file) => ['tsc', '--noEmit', '-p', file];

await Promise.all([
  check('lint and format', ['biome', 'check', '--max-diagnostics=20', '.']),
  check('dead code', ['knip', '--no-progress']),
]);
await check('types of core', typeCheck('tsconfig.core.json'));
await check('types of the page', typeCheck('tsconfig.json'));
await check('types of tools and tests', typeCheck('tsconfig.node.json'));
await unitTests();
if (await check('build of the page', ['vite', 'build', '--logLevel', 'warn'])) await browserTests();
else report('browser tests', { passed: 0, failed: 1, skipped: 0, failures: ['no page was built'] }, 0);

const skipped = total.skipped > 0 ? `, ${total.skipped} skipped` : '';
console.log(`${total.passed} passed, ${total.failed} failed${skipped}`);
process.exitCode = total.failed === 0 && total.passed > 0 ? 0 : 1;
