/** Attacks real servers on real files until the time is up (`--minutes`, 10; `--seed`, 1), and says what was tried, what survived and what was lost. */
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { ensureInstalled } from './install.mjs';

process.chdir(dirname(dirname(fileURLToPath(import.meta.url))));
ensureInstalled();
const options = { minutes: { type: 'string', default: '10' }, seed: { type: 'string', default: '1' } };
const { values } = parseArgs({ options });
const { tsImport } = await import('tsx/esm/api');
const { attack } = await tsImport('../server/tests/attack/attack.ts', import.meta.url);
const chance = xoroshiro128plus(Number(values.seed));
const endMs = Date.now() + Number(values.minutes) * 60_000;
const total = { acknowledged: 0, replacements: 0, kills: 0, readMeanwhile: 0 };
let lost = 0;
do {
  const folder = mkdtempSync(join(tmpdir(), 'rackwright-attack-'));
  const killAfter = Array.from({ length: uniformInt(chance, 1, 4) }, () => uniformInt(chance, 1, 300));
  const clients = uniformInt(chance, 20, 30);
  const survived = await attack({ path: join(folder, 'club.sqlite'), clients, killAfter });
  for (const name of Object.keys(total)) total[name] += survived[name];
  const faults = [...survived.lost, ...survived.odd, ...survived.failed];
  if (survived.integrity !== 'ok') faults.push(survived.integrity);
  lost += faults.length;
  console.log(
    `${clients} clients, killed after ${killAfter.join(', ')} writes: ${survived.acknowledged} acknowledged, ${survived.replacements} replacements, ${faults.length} faults`,
  );
  // What is wrong is kept to look at.
  if (faults.length === 0) rmSync(folder, { recursive: true });
  else console.log(`${folder}\n${faults.slice(0, 20).join('\n')}`);
} while (Date.now() < endMs);
console.log(
  `\n${total.acknowledged} acknowledged writes, ${total.replacements} replacements and ${total.kills} kills; ${total.readMeanwhile} reads answered during replacements; ${lost} faults.`,
);
if (lost > 0) process.exitCode = 1;
