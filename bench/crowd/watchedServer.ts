import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';

/** What a server did between two moments. */
export interface Watched {
  /** How long its answering thread stood still, beyond a beat: in the middle, one time in a hundred, at worst; ms. */
  stalls: [middle: number, one: number, worst: number];
  /** So long that thread was at work, and so long it waited for a processor that others had. */
  answeringS: number;
  awaitedS: number;
  /** The most that it was at work in one turn: so long nobody would be answered on a machine with nothing else to do. */
  longestTurnMs: number;
  /** All its threads together. */
  cpuS: number;
  mostBytes: number;
  bytes: number;
}

export interface WatchedServer {
  url: string;
  /** From the start of the process to its address. */
  startS: number;
  /** What it does from now on until the returned function is called; `name` says of what. */
  watch(name: string): Promise<() => Promise<Watched>>;
  close(): Promise<void>;
}

/** The program as a coach starts it, in a process of its own, watched from inside. */
export async function watchedServer(club: string): Promise<WatchedServer> {
  const from = performance.now();
  const child = spawn(
    process.execPath,
    ['--import', watching, 'cli/rackwright.js', 'serve', '--club', club, '--port', '0'],
    { stdio: ['ignore', 'pipe', 'inherit', 'ipc'] },
  );
  const url = await addressOf(child);
  const startS = (performance.now() - from) / 1000;
  const asked = async (question: object) => {
    child.send(question);
    return (await once(child, 'message'))[0];
  };
  return {
    url,
    startS,
    async watch(name) {
      await asked({ begin: true });
      return () => asked({ end: name.replaceAll(/\W+/g, '-') });
    },
    async close() {
      const ended = once(child, 'exit');
      child.kill('SIGTERM');
      await ended;
    },
  };
}

const watching = fileURLToPath(new URL('watch.mjs', import.meta.url));

function addressOf(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = '';
    child.stdout!.on('data', (piece: Buffer) => {
      said += piece.toString();
      const url = /running: (\S+)/.exec(said)?.[1];
      if (url !== undefined) resolve(url);
    });
    child.once('exit', () => reject(new Error(`The server ended before it said where it is: ${said}`)));
  });
}
