/** Runs one study of studies/ by its name: npm run study -- calibrate --lifters 500. */
import { existsSync } from 'node:fs';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ensureInstalled } from './install.mjs';

process.chdir(dirname(dirname(fileURLToPath(import.meta.url))));
ensureInstalled();
const [name, ...args] = process.argv.slice(2);
const STUDIES = ['calibrate', 'situations', 'backtest', 'mutants'].filter((study) =>
  existsSync(`studies/${study}.ts`),
);
if (STUDIES.includes(name)) {
  const { tsImport } = await import('tsx/esm/api');
  const { run } = await tsImport(`../studies/${name}.ts`, import.meta.url);
  await run(args);
} else {
  console.error(`No study ${name ?? 'named'}; there are: ${STUDIES.join(', ')}.`);
  process.exitCode = 1;
}
