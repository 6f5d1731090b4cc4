/** Reads what the test runners wrote down: how many passed, failed, were left out, and the failures in short. */
import { readFileSync } from 'node:fs';
import { relative } from 'node:path';
import { stripVTControlCharacters } from 'node:util';

/** The first lines of an error, without colours, indented. */
function short(text, lines = 12) {
  return stripVTControlCharacters(text ?? '')
    .split('\n')
    .filter((line) => line.trim() !== '' && !/node_modules|node:internal/.test(line))
    .slice(0, lines)
    .map((line) => `    ${line}`)
    .join('\n');
}

function readReport(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return undefined;
  }
}

/** A runner that ended badly without naming a failed test has failed all the same. */
function withExitCode(count, name, exitCode, log) {
  if (exitCode === 0 || count.failed > 0) return count;
  const failure = `${name} ended with code ${exitCode}\n${short(log.split('\n').slice(-40).join('\n'), 40)}`;
  return { ...count, failed: 1, failures: [failure] };
}

/** Counts a Vitest JSON report. A file that could not be loaded counts as one failure. */
export function countVitest(file, exitCode, log, root) {
  const count = { passed: 0, failed: 0, skipped: 0, failures: [] };
  for (const suite of readReport(file)?.testResults ?? []) {
    const path = relative(root, suite.name);
    if (suite.status === 'failed' && !suite.assertionResults.some((test) => test.status === 'failed')) {
      count.failed += 1;
      count.failures.push(`${path}\n${short(suite.message)}`);
    }
    for (const test of suite.assertionResults) {
      if (test.status === 'passed') count.passed += 1;
      else if (test.status !== 'failed') count.skipped += 1;
      else {
        count.failed += 1;
        count.failures.push(`${path}: ${test.fullName}\n${short(test.failureMessages.join('\n'))}`);
      }
    }
  }
  return withExitCode(count, 'vitest', exitCode, log);
}

function* specsIn(suites) {
  for (const suite of suites ?? []) {
    yield* suite.specs ?? [];
    yield* specsIn(suite.suites);
  }
}

/** Counts a Playwright JSON report. */
export function countPlaywright(file, exitCode, log) {
  const report = readReport(file);
  const count = { passed: 0, failed: 0, skipped: 0, failures: [] };
  for (const spec of specsIn(report?.suites)) {
    for (const test of spec.tests) {
      if (test.status === 'expected') count.passed += 1;
      else if (test.status === 'skipped') count.skipped += 1;
      else {
        const message = test.results.flatMap((result) => result.errors ?? []).map((error) => error.message);
        count.failed += 1;
        count.failures.push(`${spec.file}: ${spec.title}\n${short(message.join('\n'))}`);
      }
    }
  }
  return withExitCode(count, 'playwright', exitCode, log);
}
