import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, onTestFinished, test } from 'vitest';
import { type Hold, holdFile } from '../open/holdFile.ts';
import { newClubPath } from './newClubPath.ts';

function held(path: string): Hold {
  const hold = holdFile(path);
  if ('heldAt' in hold) throw new Error(`It is held at ${hold.heldAt}.`);
  onTestFinished(() => hold.release());
  return hold;
}

test('one holds a file at a time; who comes second hears where, and the next has it once it is let go', () => {
  const path = newClubPath();
  const first = held(path);
  expect(holdFile(path)).toEqual({ heldAt: null });
  first.tell('http://127.0.0.1:4747');
  expect(holdFile(path)).toEqual({ heldAt: 'http://127.0.0.1:4747' });
  expect(statSync(`${path}.served`).mode & 0o777).toBe(0o600);
  first.release();
  held(path);
  // What the one before told is not taken for this one's.
  expect(holdFile(path)).toEqual({ heldAt: null });
});

test('the hold ends with its process, however that ends', async () => {
  const path = newClubPath();
  const script = fileURLToPath(new URL('./holdUntilKilled.ts', import.meta.url));
  const child = spawn(process.execPath, ['--import', 'tsx', script, path], {
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  await once(child.stdout, 'data');
  expect(holdFile(path)).toEqual({ heldAt: 'another process' });
  child.kill('SIGKILL');
  await once(child, 'close');
  held(path);
});
