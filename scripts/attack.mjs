/**
 * Attacks real servers and programs on real files until the time is up (`--minutes`, 10; `--seed`, 1; `--only` a part of a siege's name), and says what was
 * tried, what survived and what was lost.
 */
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
const options = {
  minutes: { type: 'string', default: '10' },
  seed: { type: 'string', default: '1' },
  only: { type: 'string', default: '' },
};
const { minutes, seed, only } = Object.fromEntries(
  Object.entries(parseArgs({ options }).values).map(([name, value]) => [name, String(value)]),
);
const { tsImport } = await import('tsx/esm/api');
const { sieges } = await tsImport('../server/tests/attack/sieges.ts', import.meta.url);
const chance = xoroshiro128plus(Number(seed));
const draw = (from, to) => uniformInt(chance, from, to);
const chosen = Object.entries(sieges).filter(([name]) => name.includes(only));
if (chosen.length === 0)
  throw new Error(`--only "${only}" names none of: ${Object.keys(sieges).join('; ')}.`);
console.log(`Seed ${seed}, ${minutes} minutes.`);
const endMs = Date.now() + Number(minutes) * 60_000;
const totals = Object.fromEntries(
  chosen.map(([name]) => [name, { rounds: 0, tried: {}, survived: 0, faults: 0 }]),
);
for (let round = 0; round < chosen.length || Date.now() < endMs; round += 1) {
  const [name, siege] = chosen[round % chosen.length];
  const folder = mkdtempSync(join(tmpdir(), 'rackwright-attack-'));
  const { tried, survived, faults } = await siege(join(folder, 'club.sqlite'), draw);
  console.log(`${name}: ${inWords(tried)}; ${survived} survived, ${faults.length} faults`);
  const total = totals[name];
  total.rounds += 1;
  total.survived += survived;
  total.faults += faults.length;
  for (const [what, count] of Object.entries(tried)) total.tried[what] = (total.tried[what] ?? 0) + count;
  // What is wrong is kept to look at.
  if (faults.length === 0) rmSync(folder, { recursive: true });
  else console.log(`${folder}\n${faults.slice(0, 20).join('\n')}`);
}
console.log('\nIn all');
for (const [name, { rounds, tried, survived, faults }] of Object.entries(totals))
  console.log(`${name}, ${rounds} times: ${inWords(tried)}; ${survived} survived, ${faults} faults`);
if (Object.values(totals).some(({ faults }) => faults > 0)) process.exitCode = 1;

function inWords(tried) {
  return Object.entries(tried)
    .map(([what, count]) => `${count} ${what}`)
    .join(', ');
}
