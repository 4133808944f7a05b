import { fork } from 'node:child_process';
import { once } from 'node:events';
import { fileURLToPath } from 'node:url';
import type { Asked, Told } from './people.ts';

/** People in a process of their own, so that they do not take the time of the thread that answers. */
export async function people(asked: Asked) {
  const child = fork(fileURLToPath(new URL('people.ts', import.meta.url)), { execArgv: ['--import', 'tsx'] });
  child.send(asked);
  await once(child, 'message');
  return {
    /** Logs until the time is up. */
    async log(): Promise<void> {
      child.send('log');
      await once(child, 'message');
    },
    /** Goes away and tells what was seen. */
    async leave(): Promise<Told> {
      child.send('leave');
      const [told] = await once(child, 'message');
      return told as Told;
    },
  };
}
