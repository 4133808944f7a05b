import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const project = fileURLToPath(new URL('../../', import.meta.url));

/** A program that does one thing to a club's file and can be killed at each of its steps. */
export interface StepKills {
  /** Does it to a copy of `folder` without harm; says how many steps that takes. */
  stepsOf(what: string, folder: string): Promise<number>;
  /** Kills it at a step, counted from 1; says where the copy of `folder` is in which that was done. */
  killedAt(what: string, folder: string, step: number): Promise<string>;
  /** Lets it write no file beyond so many kilobytes, as a disk that is full does; says where the copy of `folder` is. */
  withRoomFor(what: string, folder: string, kilobytes: number): Promise<string>;
  dispose(): void;
}

/** The club's file in each folder is `club.sqlite`. The program is translated once for all its lives. */
export async function stepKills(): Promise<StepKills> {
  const place = mkdtempSync(join(tmpdir(), 'rackwright-steps-'));
  symlinkSync(join(project, 'node_modules'), join(place, 'node_modules'));
  const program = join(place, 'doOnce.mjs');
  await build({
    entryPoints: [join(project, 'store/tests/doOnce.mjs')],
    outfile: program,
    bundle: true,
    platform: 'node',
    format: 'esm',
    external: ['better-sqlite3'],
    // Some of what is bundled asks for parts of Node in the old way.
    banner: {
      js: "import { createRequire } from 'node:module'; const require = createRequire(import.meta.url);",
    },
  });
  const killer = join(project, 'store/tests/killAtStep.mjs');
  let lives = 0;

  async function life(what: string, folder: string, env: NodeJS.ProcessEnv, limit = 'unlimited') {
    const copy = join(place, `life-${++lives}`);
    cpSync(folder, copy, { recursive: true });
    const club = join(copy, 'club.sqlite');
    const command = [`ulimit -f ${limit}; exec "$@"`, 'bash', process.execPath, '--import', killer, program];
    const child = spawn('bash', ['-c', ...command, what, club], {
      // What is refused for want of room is told by the program's own error.
      stdio: ['ignore', 'ignore', limit === 'unlimited' ? 'inherit' : 'ignore'],
      env: { ...process.env, ...env },
    });
    await once(child, 'close');
    return { copy, child };
  }

  const stepsTo = join(place, 'steps');
  async function whole(what: string, folder: string): Promise<string> {
    const { copy, child } = await life(what, folder, { STEPS_TO: stepsTo });
    if (child.exitCode !== 0) throw new Error(`"${what}" ended with ${endOf(child)}.`);
    return copy;
  }

  return {
    async stepsOf(what, folder) {
      await whole(what, folder);
      return Number(readFileSync(stepsTo, 'utf8'));
    },
    async killedAt(what, folder, step) {
      const { copy, child } = await life(what, folder, { KILL_AT_STEP: String(step) });
      if (child.signalCode !== 'SIGKILL') throw new Error(`"${what}" ended with ${endOf(child)}.`);
      return copy;
    },
    async withRoomFor(what, folder, kilobytes) {
      const { copy, child } = await life(what, folder, {}, String(kilobytes));
      if (child.exitCode === null) throw new Error(`"${what}" ended with ${endOf(child)}.`);
      return copy;
    },
    dispose: () => rmSync(place, { recursive: true }),
  };
}

function endOf({ exitCode, signalCode }: ChildProcess): string {
  return String(exitCode ?? signalCode);
}
