import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { chownSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';

/** A PostgreSQL server of a test run, reached by a socket in its folder alone. */
export interface ThrowAwayPostgres {
  folder: string;
  user: string;
  stop: () => Promise<void>;
}

/** Starts a server with an empty cluster in a folder of its own; null where this machine has none. */
export async function throwAwayPostgres(): Promise<ThrowAwayPostgres | null> {
  const programs = programFolder();
  if (programs === null) return null;
  const folder = mkdtempSync(join(tmpdir(), 'pg-'));
  const as = unprivileged();
  if (as.uid !== undefined) chownSync(folder, as.uid, as.gid!);
  const cluster = join(folder, 'cluster');
  const making = ['-D', cluster, '-U', user, '--auth=trust', '--locale=C', '--encoding=UTF8', '--no-sync'];
  execFileSync(join(programs, 'initdb'), making, { ...as, cwd: folder, stdio: 'ignore' });
  // What is written here is thrown away: nothing needs to reach the disk.
  const options = ['-D', cluster, '-k', folder, '-c', 'listen_addresses=', '-c', 'fsync=off'];
  const server = spawn('sh', ['-c', whileInputIsOpen, join(programs, 'postgres'), ...options], {
    ...as,
    cwd: folder,
    stdio: ['pipe', 'ignore', 'pipe'],
  });
  await isReady(server);
  return {
    folder,
    user,
    async stop() {
      const ended = new Promise((resolve) => server.once('exit', resolve));
      server.stdin.end();
      await ended;
      rmSync(folder, { recursive: true });
    },
  };
}

const user = 'tester';

/** Runs a program until the input ends, as it does too when the tests are killed; QUIT is the server's signal to wait for nobody. */
const whileInputIsOpen = '"$0" "$@" & cat; kill -QUIT $!; wait';

/** Where the server's programs are: on the path, or where Debian puts the newest. */
function programFolder(): string | null {
  const debian = '/usr/lib/postgresql';
  const versions = existsSync(debian) ? readdirSync(debian).sort((a, b) => Number(b) - Number(a)) : [];
  const folders = [
    ...(process.env['PATH'] ?? '').split(delimiter),
    ...versions.map((version) => join(debian, version, 'bin')),
  ];
  return (
    folders.find((folder) => existsSync(join(folder, 'initdb')) && existsSync(join(folder, 'postgres'))) ??
    null
  );
}

/** The server will not run as root; then it runs as nobody. */
function unprivileged(): { uid?: number; gid?: number } {
  if (process.getuid?.() !== 0) return {};
  return { uid: idOfNobody('-u'), gid: idOfNobody('-g') };
}

function idOfNobody(which: '-u' | '-g'): number {
  return Number(execFileSync('id', [which, 'nobody'], { encoding: 'utf8' }));
}

/** Resolves when the server says that it takes connections. */
function isReady(server: ChildProcess): Promise<void> {
  return new Promise((resolve, reject) => {
    let said = '';
    server.stderr!.on('data', (chunk: Buffer) => {
      said += chunk.toString();
      if (said.includes('ready to accept connections')) resolve();
      if (said.includes('FATAL')) reject(new Error(`PostgreSQL does not start: ${said}`));
    });
    server.once('error', reject);
  });
}
