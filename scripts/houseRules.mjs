import { readFileSync } from 'node:fs';
import { basename } from 'node:path';

const maxLines = 400;
const roomlessNames = /^(index|utils?|helpers?|common|shared|misc|types)\.tsx?$/;

/** Rooms whose answers follow from what they are asked alone. */
const pureRooms = /^(core|contract|reckon)\//;

/**
 * Patterns that must not stand in the program's own source, what to do instead, and, where not everywhere, in which files. A
 * pattern that catches nothing may be blind: each is held to what it `catches`.
 */
const forbidden = [
  {
    pattern: /\b(TODO|FIXME|XXX|HACK)\b/,
    cure: 'do it now or file it, not in the source',
    catches: ['// TODO: later'],
  },
  {
    pattern: /@ts-(ignore|nocheck|expect-error)|(oxlint|eslint)-disable|biome-ignore/,
    cure: 'mend the code, not the checker',
    catches: ['// @ts-ignore', '// biome-ignore lint: no'],
  },
  {
    pattern: /\b(describe|it|test)\.(only|skip|todo|fixme)\b/,
    cure: 'every test runs, always',
    catches: ['test.only(x)', 'it.skip(x)'],
  },
  {
    pattern: /\bDate\.now\b|\bnew Date\(\s*\)|(?<!new )\bDate\(|\bperformance\.now\b/,
    cure: 'only the edges know the time: take it as data or as a clock',
    within: pureRooms,
    catches: ['Date.now()', 'f(Date.now)', 'new Date()', 'Date()', 'performance.now()'],
  },
  {
    pattern: /\bMath\.random\b|\brandom(UUID|Bytes)\b/,
    cure: 'take a seed: the same question has the same answer',
    within: pureRooms,
    catches: ['Math.random()', 'crypto.randomUUID()'],
  },
];

/** Rooms too long to be read without being told where to begin; the page names each of their files. */
const longRooms = /^core\/(strength|day)\/\w+\.ts$/;
const readingOrder = 'docs/reading-order.md';

/** No file over 400 lines, no room for everything, no unfinished business, no file of a long room that its page forgets. */
export function checkHouseRules(sourceFiles) {
  const faults = sourceFiles.flatMap((file) => {
    const lines = readFileSync(file, 'utf8').split('\n');
    const found = [];
    if (lines.length > maxLines) found.push(`${file}: ${lines.length} lines, at most ${maxLines}`);
    if (roomlessNames.test(basename(file))) found.push(`${file}: name it by what it knows`);
    lines.forEach((line, index) => {
      for (const { pattern, cure, within = /^/ } of forbidden) {
        if (within.test(file) && pattern.test(line))
          found.push(`${file}:${index + 1}: ${line.trim()} (${cure})`);
      }
    });
    return found;
  });
  for (const { pattern, catches } of forbidden)
    for (const line of catches)
      if (!pattern.test(line)) faults.push(`the rule ${pattern} does not catch: ${line}`);
  const page = readFileSync(readingOrder, 'utf8');
  for (const file of sourceFiles.filter((name) => longRooms.test(name)))
    if (!page.includes(`\`${basename(file, '.ts')}\``))
      faults.push(`${file}: ${readingOrder} does not name it`);
  return { ok: faults.length === 0, note: `${sourceFiles.length} files`, output: faults.join('\n') };
}

/** Every figure that the tests hold against the world says where it comes from, in which unit and how near is near. */
export function checkFigures(dataFiles) {
  const faults = dataFiles.flatMap((file) => {
    const text = readFileSync(file, 'utf8');
    return ['source', 'unit', 'tolerance']
      .filter((field) => !new RegExp(`"${field}[A-Za-z]*"\\s*:\\s*[^\\s,}]`).test(text))
      .map((field) => `${file}: no "${field}"`);
  });
  return { ok: faults.length === 0, note: `${dataFiles.length} files`, output: faults.join('\n') };
}

/** Rooms of the web whose sheets speak for every screen. */
const everyScreen = /^web\/(theme|parts|charts|shell|setup)\//;

/**
 * A screen's sheet stays loaded when the coach goes on to the next screen, so two screens never give the same name to different
 * things. Only rules for a class alone count: `.part > .name` is said of one place.
 */
export function checkSheets(sheets) {
  const roomOf = new Map();
  const faults = [];
  for (const file of sheets.filter((name) => !everyScreen.test(name))) {
    const room = file.split('/')[1];
    const text = readFileSync(file, 'utf8').replaceAll(/\/\*.*?\*\//gs, '');
    const alone = text.matchAll(/(?<=[{},]\s*)\.([a-z][\w-]*)(?=\s*[,{])/g);
    for (const [, name] of alone) {
      const other = roomOf.get(name) ?? room;
      if (other !== room) faults.push(`${file}: .${name} is styled by web/${other} too`);
      roomOf.set(name, other);
    }
  }
  return { ok: faults.length === 0, note: `${roomOf.size} names`, output: [...new Set(faults)].join('\n') };
}
