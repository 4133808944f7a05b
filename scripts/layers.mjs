import {
  copyFileSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, resolve } from 'node:path';
import { runCommand } from './command.mjs';

/** The folders whose sources are checked. */
export const rooms = [
  'core',
  'contract',
  'reckon',
  'store',
  'server',
  'cli',
  'web',
  'demo',
  'walks',
  'bench',
  'studies',
];

/** Imports run one way only, and the checker must have read every file that it vouches for. */
export async function checkLayers(sourceFiles) {
  const texts = Object.fromEntries(sourceFiles.map((file) => [file, readFileSync(file, 'utf8')]));
  const { violations, cruised, output } = await cruise(texts);
  const unseen = output ? [] : sourceFiles.filter((file) => !cruised.has(file));
  return {
    ok: output === '' && violations.length === 0 && unseen.length === 0 && cruised.size > 0,
    note: `${cruised.size} modules`,
    output: [
      output,
      ...violations,
      ...unseen.map((file) => `${file}: the layer checker did not read it`),
    ].join('\n'),
  };
}

/** A checker that finds nothing may be blind: it is given imports against the line and must object to each. */
export async function checkLayerChecker() {
  const planted = {
    'core/band/value.ts': "import { serve } from '#server/serve.ts';\nexport const value = serve;\n",
    'core/band/type.ts': "import type { Served } from '#server/serve.ts';\nexport type Value = Served;\n",
    'core/band/disk.ts': "import { readFileSync } from 'node:fs';\nexport const disk = readFileSync;\n",
    'core/numeric/upward.ts': "import { value } from '#core/band/value.ts';\nexport const upward = value;\n",
    'contract/records/upward.ts':
      "import { dayPlan } from '#contract/day/dayPlan.ts';\nexport const upward = dayPlan;\n",
    'contract/day/dayPlan.ts':
      "import { solve } from '#reckon/day/solve.ts';\nexport const dayPlan = solve;\n",
    'reckon/gear/upward.ts': "import { solve } from '#reckon/day/solve.ts';\nexport const upward = solve;\n",
    'cli/dayText.ts': "import { Paper } from '#web/print/Paper.tsx';\nexport const text = Paper;\n",
    'web/gear/Screen.tsx':
      "import { serve } from '#server/serve.ts';\nexport const Screen = () => <b>{serve}</b>;\n",
    'web/day/Later.tsx':
      "export const later = () => import('../gear/Screen.tsx');\nexport const b = <b />;\n",
    'web/anotherScreen/Other.tsx':
      "import { Screen } from '#web/gear/Screen.tsx';\nexport const Other = () => <Screen />;\n",
  };
  const sound = {
    'server/serve.ts': 'export const serve = 1;\nexport type Served = number;\n',
    'reckon/day/solve.ts': 'export const solve = 1;\n',
    'web/print/Paper.tsx': 'export const Paper = () => <b />;\n',
  };
  const house = { ...planted, ...sound };
  const { violations, output } = await cruise(house);
  const missed = Object.keys(planted).filter(
    (file) => !violations.some((line) => line.includes(`: ${file} ->`)),
  );
  return {
    ok: output === '' && missed.length === 0,
    note: `${Object.keys(planted).length} planted faults`,
    output: [output, ...missed.map((file) => `${file}: a planted fault was not caught`)].join('\n'),
  };
}

/**
 * Cruises a copy of the sources. The parser that dependency-cruiser has for TypeScript 7 reads no JSX, so that in the
 * copy a .tsx file holds its imports alone.
 */
async function cruise(texts) {
  const copy = mkdtempSync(join(tmpdir(), 'rackwright-layers-'));
  try {
    for (const [path, text] of Object.entries(texts)) {
      mkdirSync(join(copy, dirname(path)), { recursive: true });
      writeFileSync(join(copy, path), path.endsWith('.tsx') ? await importsOf(text) : text);
    }
    for (const file of ['package.json', '.dependency-cruiser.cjs']) copyFileSync(file, join(copy, file));
    symlinkSync(resolve('node_modules'), join(copy, 'node_modules'), 'junction');
    const present = rooms.filter((room) => Object.keys(texts).some((path) => path.startsWith(`${room}/`)));
    const args = ['--config', '.dependency-cruiser.cjs', '--output-type', 'json', ...present];
    const { stdout, output } = await runCommand('depcruise', args, { cwd: copy });
    return reading(stdout, output);
  } finally {
    rmSync(copy, { recursive: true, force: true });
  }
}

function reading(stdout, output) {
  try {
    const { modules, summary } = JSON.parse(stdout);
    return {
      cruised: new Set(modules.map(({ source }) => source)),
      violations: summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} -> ${to}`),
      output: '',
    };
  } catch {
    return { cruised: new Set(), violations: [], output: output || 'the layer checker said nothing' };
  }
}

/** The imports of a .tsx file as a module of its own: static, of types, re-exports and dynamic ones. */
async function importsOf(text) {
  const { parseSync } = await import('@swc/core');
  const lines = [];
  const visit = (node) => {
    if (Array.isArray(node)) return node.forEach(visit);
    if (typeof node !== 'object' || node === null) return;
    if (node.type === 'CallExpression' && node.callee.type === 'Import') {
      const [argument] = node.arguments;
      lines.push(`import(${JSON.stringify(argument.expression.value)});`);
    } else if (typeof node.source?.value === 'string') {
      lines.push(`import ${node.typeOnly ? 'type ' : ''}{} from ${JSON.stringify(node.source.value)};`);
    }
    Object.values(node).forEach(visit);
  };
  visit(parseSync(text, { syntax: 'typescript', tsx: true }).body);
  return `${lines.join('\n')}\nexport {};\n`;
}
