import { spawn } from 'node:child_process';
import { text } from 'node:stream/consumers';
import { projectRoot } from './projectRoot.ts';

export interface CliRun {
  status: number | null;
  stdout: string;
  stderr: string;
}

/** For tests: the real command in a process of its own, with `input` on its standard input. */
export async function runCli(args: readonly string[], input = ''): Promise<CliRun> {
  const child = spawn(process.execPath, ['cli/rackwright.js', ...args], { cwd: projectRoot });
  const status = new Promise<number | null>((resolve, reject) => {
    child.once('error', reject);
    child.once('close', resolve);
  });
  child.stdin.on('error', () => undefined);
  child.stdin.end(input);
  const [stdout, stderr] = await Promise.all([text(child.stdout), text(child.stderr)]);
  return { status: await status, stdout, stderr };
}
