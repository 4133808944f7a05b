import { spawn } from 'node:child_process';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { type Mutant, mutantsOf } from './mutantsOf.ts';
import { whyUntold } from './untold.ts';

/** What a room's tests made of its mutants. */
export interface RoomTried {
  readonly room: string;
  readonly possible: number;
  readonly tried: readonly MutantTried[];
}

interface MutantTried {
  readonly mutant: Mutant;
  readonly isCaught: boolean;
  /** Caught by nothing but the time that its tests took. */
  readonly isHung: boolean;
  /** Why no answer can show it, by the list kept beside; null: one could. */
  readonly whyUntold: string | null;
}

export interface TrySize {
  /** Folders whose tests are asked too where the room's own see nothing. */
  readonly beside?: readonly string[];
  /** How many mutants of a room, drawn by the seed. */
  readonly count: number;
  readonly seed: number;
  /** No mutant is begun after so many minutes; the drawn ones are in no order, so those tried speak for the rest. */
  readonly minutes: number;
}

/** A folder whose tests are asked, and how long they may take over a mutant. */
interface Asked {
  folder: string;
  limitMs: number;
}

/** A mutant that makes its tests so many times slower, and ten seconds, hangs: that is seen too. */
const HANGS_FACTOR = 4;
const HANGS_MS = 10_000;

/**
 * Tries mutants of the sources in `room` (a folder under `root`, or one file of a room), two at a time, on those of the room's tests
 * that import them.
 */
export async function tryRoom(
  root: string,
  room: string,
  { count, seed, minutes, beside = [] }: TrySize,
): Promise<RoomTried> {
  const startedMs = performance.now();
  const isFile = statSync(join(root, room)).isFile();
  const sources = isFile ? [join(root, room)] : sourcesUnder(join(root, room));
  const asked: Asked[] = [];
  for (const folder of [isFile ? dirname(room) : room, ...beside]) {
    const fromMs = performance.now();
    if ((await outcome(root, folder, sources)) !== 'passed')
      throw new Error(`The tests of ${folder} fail as they are.`);
    asked.push({ folder, limitMs: HANGS_MS + HANGS_FACTOR * (performance.now() - fromMs) });
  }
  const outcomeOf = async (mutant: Mutant): Promise<Outcome> => {
    for (const { folder, limitMs } of asked) {
      const found = await outcome(root, folder, [mutant.file], { mutant, limitMs });
      if (found !== 'passed') return found;
    }
    return 'passed';
  };
  const texts = new Map(sources.map((file) => [file, readFileSync(file, 'utf8')]));
  const mutants = sources.flatMap((file) => mutantsOf(file, texts.get(file)!));
  const waiting = shuffled(mutants, seed).slice(0, count);
  const tried: MutantTried[] = [];
  const work = async () => {
    while (performance.now() - startedMs < 60_000 * minutes) {
      const mutant = waiting.shift();
      if (!mutant) return;
      const why = whyUntold(root, mutant, texts.get(mutant.file)!);
      const found = await outcomeOf(mutant);
      tried.push({ mutant, isCaught: found !== 'passed', isHung: found === 'hung', whyUntold: why });
    }
  };
  await Promise.all([work(), work()]);
  return { room, possible: mutants.length, tried };
}

function sourcesUnder(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true })
    .flatMap((entry) => {
      const path = join(folder, entry.name);
      if (entry.isDirectory()) return entry.name === 'tests' ? [] : sourcesUnder(path);
      return /\.tsx?$/.test(path) && !/\.test\.tsx?$/.test(path) ? [path] : [];
    })
    .toSorted();
}

function shuffled(mutants: readonly Mutant[], seed: number): Mutant[] {
  const generator = xoroshiro128plus(seed);
  // Neighbouring seeds begin alike.
  for (let i = 0; i < 32; i += 1) uniformFloat64(generator);
  const keyed = mutants.map((mutant) => ({ mutant, key: uniformFloat64(generator) }));
  return keyed.toSorted((a, b) => a.key - b.key).map(({ mutant }) => mutant);
}

type Outcome = 'passed' | 'failed' | 'hung';

/** What a folder's tests that import these sources come to, within the limit where there is one. */
function outcome(
  root: string,
  folder: string,
  sources: readonly string[],
  change?: { readonly mutant: Mutant; readonly limitMs: number },
): Promise<Outcome> {
  const vitest = fileURLToPath(new URL('../../node_modules/vitest/vitest.mjs', import.meta.url));
  const config = fileURLToPath(new URL('./oneChange.ts', import.meta.url));
  const args = [
    'related',
    '--run',
    '--root',
    root,
    '--config',
    config,
    '--dir',
    join(root, folder),
    ...sources,
  ];
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [vitest, ...args], {
      env: { ...process.env, MUTANT: JSON.stringify(change?.mutant ?? null) },
      stdio: 'ignore',
      // A group of its own, so that what hangs is ended with all that it started.
      detached: true,
    });
    let isLate = false;
    const end = () => {
      isLate = true;
      process.kill(-child.pid!, 'SIGKILL');
    };
    const limit = change && setTimeout(end, change.limitMs);
    child.on('close', (status) => {
      clearTimeout(limit);
      if (isLate) resolve('hung');
      else resolve(status === 0 ? 'passed' : 'failed');
    });
  });
}
