/**
 * Everything: the checks, the tests, the browser walks. The last line is `N passed, N failed` and counts every
 * test that ran and each check as one. A test that was skipped proves nothing and counts as failed.
 */
import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { runChecks } from './check.mjs';
import { chromiumMissing, findChromium } from './chromium.mjs';
import { runCommand } from './command.mjs';
import { ensureInstalled } from './install.mjs';

const nothing = { passed: 0, failed: 0 };
const broken = { passed: 0, failed: 1 };

process.chdir(dirname(dirname(fileURLToPath(import.meta.url))));
ensureInstalled();
rmSync('.cache/results', { recursive: true, force: true });
mkdirSync('.cache/results', { recursive: true });

const parts = [];
for (const part of [checks, tests, walks]) parts.push(await part());
const { passed, failed } = parts.reduce(
  (sum, part) => ({ passed: sum.passed + part.passed, failed: sum.failed + part.failed }),
  nothing,
);
process.exitCode = failed === 0 && passed > 0 ? 0 : 1;
console.log(`${passed} passed, ${failed} failed`);

async function checks() {
  console.log('Checks');
  const results = await runChecks();
  const good = results.filter(({ ok }) => ok).length;
  return { passed: good, failed: results.length - good };
}

async function tests() {
  console.log('\nTests');
  const report = '.cache/results/tests.json';
  const reporters = ['--reporter=default', '--reporter=json', `--outputFile.json=${report}`];
  const { status } = await runCommand('vitest', ['run', ...reporters], { echo: true });
  const read = readReport(report);
  if (!read) return broken;
  const unread = read.testResults.filter(
    (file) => file.status === 'failed' && file.assertionResults.length === 0,
  );
  const failed = read.numTotalTests - read.numPassedTests + unread.length;
  return settle({ passed: read.numPassedTests, failed }, status);
}

async function walks() {
  console.log('\nBrowser walks');
  const chromium = findChromium();
  if (!chromium) {
    console.error(chromiumMissing);
    return broken;
  }
  try {
    await buildScreens();
  } catch (error) {
    console.error(`The screens could not be built: ${error.message}`);
    return broken;
  }
  const report = '.cache/results/walks.json';
  const { status } = await runCommand('playwright', ['test', '--reporter=list,json'], {
    echo: true,
    env: { CHROMIUM: chromium, PLAYWRIGHT_JSON_OUTPUT_NAME: report },
  });
  const read = readReport(report);
  if (!read) return broken;
  const { expected, unexpected, flaky, skipped } = read.stats;
  return settle({ passed: expected, failed: unexpected + flaky + skipped }, status);
}

/** Once, before several servers start at the same time. */
async function buildScreens() {
  const { tsImport } = await import('tsx/esm/api');
  const { buildScreensWhenStale } = await tsImport('../cli/buildScreens.ts', import.meta.url);
  await buildScreensWhenStale((sentence) => console.log(sentence));
}

function readReport(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8'));
  } catch {
    return null;
  }
}

/** A run that ended badly or ran nothing failed, even if no single test says so. */
function settle(count, status) {
  if (count.failed > 0 || (status === 0 && count.passed > 0)) return count;
  return { passed: count.passed, failed: 1 };
}
