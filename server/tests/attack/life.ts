import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';

/** A real server on a club's file, begun and not yet serving. */
export interface Life {
  child: ChildProcess;
  /** Opens the file and serves it; says at which address. */
  serve(): Promise<string>;
  /** Kills it with -9 and waits until it is gone. */
  end(): Promise<void>;
}

export function newLife(path: string): Life {
  const script = fileURLToPath(new URL('./serveUntilKilled.mjs', import.meta.url));
  const child = spawn(process.execPath, [script, path, dirname(path)], {
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  return {
    child,
    async serve() {
      child.stdin.write('go\n');
      const [said] = (await once(child.stdout, 'data')) as [Buffer];
      return said.toString().trim();
    },
    async end() {
      child.kill('SIGKILL');
      if (child.exitCode === null && child.signalCode === null) await once(child, 'close');
    },
  };
}
