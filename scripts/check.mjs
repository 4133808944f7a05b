/** Everything that can be said about the source without running it: one line a check. */
import { readdirSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { runCommand } from './command.mjs';
import { checkFigures, checkHouseRules, checkSheets } from './houseRules.mjs';
import { ensureInstalled } from './install.mjs';
import { checkLayerChecker, checkLayers, rooms } from './layers.mjs';

/** Runs every check, two at a time, and prints its line as it ends. */
export async function runChecks() {
  const files = rooms.flatMap(filesUnder);
  const sourceFiles = files.filter((file) => /\.tsx?$/.test(file));
  const sheets = files.filter((file) => file.endsWith('.css'));
  const figures = files.filter((file) => /^core\/checks\/.*\.json$/.test(file));
  const waiting = [
    ['types of everything', () => tool('tsc', ['-p', 'tsconfig.node.json'])],
    ['lint', () => tool('oxlint', ['--type-aware', '--deny-warnings'])],
    ['types of core alone', () => tool('tsc', ['-p', 'tsconfig.core.json'])],
    ['types of the screens', () => tool('tsc', ['-p', 'tsconfig.web.json'])],
    ['layers', () => checkLayers(sourceFiles)],
    ['layer checker sees', checkLayerChecker],
    ['unused code and packages', () => tool('knip', ['--no-progress'])],
    ['format', () => tool('biome', ['check', '--error-on-warnings'])],
    ['house rules', () => checkHouseRules(sourceFiles)],
    ['names of styles', () => checkSheets(sheets)],
    ['figures have sources', () => checkFigures(figures)],
  ];
  const results = [];
  const worker = async () => {
    for (let next = waiting.shift(); next; next = waiting.shift()) {
      const [name, check] = next;
      const startedMs = performance.now();
      const { ok, note = '', output } = await check();
      const seconds = ((performance.now() - startedMs) / 1000).toFixed(1);
      if (!ok) console.log(`\n${output.trimEnd()}`);
      console.log(
        `${ok ? 'ok    ' : 'FAILED'} ${name.padEnd(26)} ${`${seconds} s`.padStart(7)}  ${note}`.trimEnd(),
      );
      results.push({ name, ok });
    }
  };
  await Promise.all([worker(), worker()]);
  return results;
}

async function tool(command, args) {
  const { status, output } = await runCommand(command, args);
  return { ok: status === 0, output };
}

function filesUnder(path) {
  return readdirSync(path, { withFileTypes: true }).flatMap((entry) => {
    const inside = join(path, entry.name);
    if (!entry.isDirectory()) return [inside];
    return ['dist', 'node_modules'].includes(entry.name) ? [] : filesUnder(inside);
  });
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  process.chdir(dirname(dirname(process.argv[1])));
  ensureInstalled();
  const results = await runChecks();
  process.exitCode = results.every(({ ok }) => ok) ? 0 : 1;
}
