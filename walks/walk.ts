import { type ChildProcess, spawn } from 'node:child_process';
import { copyFile, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { test as base } from '@playwright/test';

/** A walk's own running program: `startsWith` says what its new club file holds. */
interface Walk {
  startsWith: 'demo' | 'nothing';
  /** Whether telephones may read the calendar, at another port of this machine alone. */
  forTelephones: boolean;
  address: string;
}

/** The demo club as it is founded, once for each worker: every walk begins with a copy. */
interface Founded {
  demoClub: string;
}

/** `test` with a real server process on a free port and a club file of its own; pages open relative to it. */
export const test = base.extend<Walk, Founded>({
  demoClub: [
    // Playwright reads from the pattern of the first argument what a fixture needs, and asks for one.
    async ({ browserName: _browser }, use) => {
      await inFolder(async (folder) => {
        const club = join(folder, 'demo.sqlite');
        const server = serve(club, '--demo');
        await addressOf(server);
        await stop(server);
        await use(club);
      });
    },
    { scope: 'worker' },
  ],
  startsWith: ['demo', { option: true }],
  forTelephones: [false, { option: true }],
  address: async ({ startsWith, forTelephones, demoClub }, use) => {
    await inFolder(async (folder) => {
      const club = join(folder, 'club.sqlite');
      if (startsWith === 'demo') await copyFile(demoClub, club);
      const server = serve(
        club,
        ...(forTelephones ? ['--calendar-on', '127.0.0.1', '--calendar-port', '0'] : []),
      );
      try {
        await use(await addressOf(server));
      } finally {
        await stop(server);
      }
    });
  },
  baseURL: async ({ address }, use) => {
    await use(address);
  },
});

async function inFolder(work: (folder: string) => Promise<void>): Promise<void> {
  const folder = await mkdtemp(join(tmpdir(), 'rackwright-walk-'));
  try {
    await work(folder);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

function serve(club: string, ...more: string[]) {
  const args = ['cli/rackwright.js', 'serve', '--port', '0', '--club', club, ...more];
  return spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'inherit'] });
}

/** The server's first line names the address once it answers. */
async function addressOf(server: ChildProcess & { stdout: NodeJS.ReadableStream }): Promise<string> {
  for await (const line of createInterface({ input: server.stdout })) {
    const address = /http:\/\/[\w.:]+/.exec(line)?.[0];
    if (address) {
      server.stdout.resume();
      return address;
    }
  }
  throw new Error('The server ended before it named its address.');
}

function stop(server: ChildProcess): Promise<void> {
  return new Promise((resolve) => {
    if (server.exitCode !== null) return resolve();
    server.once('exit', () => resolve());
    server.kill('SIGTERM');
  });
}
