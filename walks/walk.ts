import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { test as base } from '@playwright/test';

/** A walk's own running program: `startsWith` says what its new club file holds. */
interface Walk {
  startsWith: 'demo' | 'nothing';
  address: string;
}

/** `test` with a real server process on a free port and a club file of its own; pages open relative to it. */
export const test = base.extend<Walk>({
  startsWith: ['demo', { option: true }],
  address: async ({ startsWith }, use) => {
    const folder = await mkdtemp(join(tmpdir(), 'rackwright-walk-'));
    const args = ['cli/rackwright.js', 'serve', '--port', '0', '--club', join(folder, 'club.sqlite')];
    const server = spawn(process.execPath, startsWith === 'demo' ? [...args, '--demo'] : args, {
      stdio: ['ignore', 'pipe', 'inherit'],
    });
    try {
      await use(await addressOf(server));
    } finally {
      await stop(server);
      await rm(folder, { recursive: true, force: true });
    }
  },
  baseURL: async ({ address }, use) => {
    await use(address);
  },
});

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
