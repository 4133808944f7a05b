import { Readable } from 'node:stream';
import { vi } from 'vitest';
import type { CliRun } from '../runCli.ts';
import { runProgram } from '../runProgram.ts';

/** A command in the test's own process, where nothing has to be loaded anew, with `input` on its standard input. */
export async function callCli(args: readonly string[], input = ''): Promise<CliRun> {
  const said = { stdout: '', stderr: '' };
  const spies = [
    ...(['stdout', 'stderr'] as const).map((stream) =>
      vi.spyOn(process[stream], 'write').mockImplementation((chunk) => {
        said[stream] += chunk;
        return true;
      }),
    ),
    vi
      .spyOn(process, 'stdin', 'get')
      .mockReturnValue(Readable.from([Buffer.from(input)]) as typeof process.stdin),
  ];
  try {
    return { status: await runProgram(args), ...said };
  } finally {
    for (const spy of spies) spy.mockRestore();
  }
}
