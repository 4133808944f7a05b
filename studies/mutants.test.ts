import {
  mkdirSync,
  mkdtempSync,
  readFileSync,
  realpathSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { mutantsOf } from './mutants/mutantsOf.ts';
import { tryRoom } from './mutants/tryRoom.ts';
import { isOf, untold } from './mutants/untold.ts';

/** A room of one function with one test that makes `claims` of it. */
function plantRoom(root: string, room: string, claims: string): void {
  mkdirSync(join(root, room));
  writeFileSync(join(root, room, 'grown.ts'), 'export const isGrown = (years: number) => years >= 18;\n');
  writeFileSync(
    join(root, room, 'grown.test.ts'),
    `import { expect, it } from 'vitest';\nimport { isGrown } from './grown.ts';\nit('knows', () => {${claims}});\n`,
  );
}

function changes(source: string): string[] {
  return mutantsOf('a.ts', source).map(({ from, to }) => `${from} -> ${to}`);
}

describe('tryRoom', () => {
  it('finds what a blind test lets pass, and nothing behind a sharp one', async () => {
    const root = realpathSync(mkdtempSync(join(tmpdir(), 'mutants-')));
    try {
      symlinkSync(join(process.cwd(), 'node_modules'), join(root, 'node_modules'));
      plantRoom(root, 'blind', 'expect(isGrown(40)).toBe(true); expect(isGrown(3)).toBe(false);');
      plantRoom(root, 'sharp', 'expect(isGrown(18)).toBe(true); expect(isGrown(17)).toBe(false);');
      const size = { count: 10, seed: 1, minutes: 2 };
      const passed = async (room: string) => {
        const { tried } = await tryRoom(root, room, size);
        return tried.flatMap(({ mutant, isCaught }) => (isCaught ? [] : [`${mutant.from} -> ${mutant.to}`]));
      };
      expect((await passed('blind')).toSorted()).toEqual(['18 -> 27', '>= -> >']);
      expect(await passed('sharp')).toEqual([]);
      expect(await passed('blind/grown.ts')).toHaveLength(2);
    } finally {
      rmSync(root, { recursive: true });
    }
  });
});

describe('mutantsOf', () => {
  it('changes signs, comparisons, guards, branches, numbers and sentences, and no types', () => {
    expect(changes('const a: 5 | "a type" = b * c;')).toEqual(['* -> /']);
    expect(changes('a < b && !c;')).toEqual(['&& -> ||', '< -> <=', '< -> >', '!c -> c']);
    expect(changes('function f() { if (a) return; if (b) g(); }')).toEqual(['a -> false']);
    expect(changes('a ? -b : c;')).toEqual(['a ? -b : c -> a ? (c) : (-b)', '-b -> b']);
    expect(changes('Math.min(a, 0.5);')).toEqual(['Math.min -> Math.max', '0.5 -> 0.75']);
    expect(changes("f('word', 'a sentence', `of ${a + b}`);")).toEqual([
      "'a sentence' -> ''",
      "`of ${a + b}` -> ''",
      '+ -> -',
    ]);
  });
});

describe('what no answer can show', () => {
  it.each(untold)('stands in $file as $within, changes as is said, and has a reason', (entry) => {
    const source = readFileSync(entry.file, 'utf8');
    expect(source.split(entry.within)).toHaveLength(2);
    const found = mutantsOf(entry.file, source).filter((mutant) => isOf(entry, mutant, source));
    const said = found.map(({ from, to }) => `${from} -> ${to}`);
    // One change each: an entry that covers more than it says is too wide.
    expect(said.toSorted()).toEqual([...entry.changes].toSorted());
    expect(entry.why).toMatch(/^[A-Z].{20,}\.$/);
  });

  it('is no excuse for another change of the same expression, nor for the same change elsewhere', () => {
    const entry = { file: 'a.ts', within: 'if (a > b)', changes: ['> -> >='], why: '' };
    const source = 'if (a > b) c(); else if (a > d) e();';
    const excused = mutantsOf('a.ts', source).filter((mutant) => isOf(entry, mutant, source));
    expect(excused.map(({ start, to }) => [start, to])).toEqual([[6, '>=']]);
  });
});
