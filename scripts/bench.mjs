/** Runs every measurement in bench/ one after another; each file exports `run()` and prints its own ratio. */
import { readdirSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ensureInstalled } from './install.mjs';

process.chdir(dirname(dirname(fileURLToPath(import.meta.url))));
ensureInstalled();
const { tsImport } = await import('tsx/esm/api');
/** Figures and what begins with -- are asked of a measurement, not names of any. */
const wanted = process.argv.slice(2).filter((word) => !/^(--|\d)/.test(word));
const files = readdirSync('bench')
  .filter((name) => name.endsWith('.ts') && (wanted.length === 0 || wanted.includes(name.replace('.ts', ''))))
  .toSorted();
if (files.length === 0) {
  console.error(`No measurement ${wanted.join(', ')} in bench/.`);
  process.exitCode = 1;
}
for (const name of files) {
  console.log(`\n${name.replace('.ts', '')}`);
  const { run } = await tsImport(`../bench/${name}`, import.meta.url);
  await run();
}
