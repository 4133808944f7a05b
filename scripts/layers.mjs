import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { runCommand } from './command.mjs';

const rooms = ['core', 'contract', 'store', 'server', 'cli', 'web', 'demo', 'walks', 'bench'];

/** Imports run one way only, and the checker must have read every file that it vouches for. */
export async function checkLayers(sourceFiles) {
  const { violations, cruised, output } = await cruise(process.cwd(), rooms);
  const unseen = sourceFiles.filter((file) => !cruised.has(file));
  return {
    ok: violations.length === 0 && unseen.length === 0 && cruised.size > 0,
    note: `${cruised.size} modules`,
    output: [
      output,
      ...violations,
      ...unseen.map((file) => `${file}: the layer checker did not read this file`),
    ].join('\n'),
  };
}

/** A checker that finds nothing may be blind: it is given imports against the line and must object to each. */
export async function checkLayerChecker() {
  const house = mkdtempSync(join(tmpdir(), 'rackwright-layers-'));
  const forbidden = {
    'core/band/value.ts': "import { serve } from '#server/serve.ts';\nexport const value = serve;\n",
    'core/band/type.ts': "import type { Served } from '#server/serve.ts';\nexport type Value = Served;\n",
    'core/band/disk.ts': "import { readFileSync } from 'node:fs';\nexport const disk = readFileSync;\n",
    'core/numeric/upward.ts': "import { value } from '#core/band/value.ts';\nexport const upward = value;\n",
  };
  try {
    const files = {
      ...forbidden,
      'server/serve.ts': 'export const serve = 1;\nexport type Served = number;\n',
    };
    for (const [path, text] of Object.entries(files)) {
      mkdirSync(join(house, dirname(path)), { recursive: true });
      writeFileSync(join(house, path), text);
    }
    for (const file of ['package.json', '.dependency-cruiser.cjs']) cpSync(file, join(house, file));
    const { violations, output } = await cruise(house, ['core', 'server']);
    const missed = Object.keys(forbidden).filter((file) => !violations.some((line) => line.includes(file)));
    return {
      ok: missed.length === 0,
      note: `${Object.keys(forbidden).length} planted faults`,
      output: missed.length === 0 ? '' : `${output}\nnot caught: ${missed.join(', ')}`,
    };
  } finally {
    rmSync(house, { recursive: true, force: true });
  }
}

async function cruise(cwd, roots) {
  const args = ['--config', '.dependency-cruiser.cjs', '--output-type', 'json', ...roots];
  const { stdout, output } = await runCommand('depcruise', args, { cwd });
  try {
    const { modules, summary } = JSON.parse(stdout);
    return {
      cruised: new Set(modules.map((module) => module.source)),
      violations: summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} -> ${to}`),
      output: '',
    };
  } catch {
    return { cruised: new Set(), violations: [], output };
  }
}
