import { existsSync } from 'node:fs';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { runCli } from '../runCli.ts';

let folder = '';
const club = (name: string) => ['--club', join(folder, name)];

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'rackwright-transfer-'));
});
afterAll(async () => {
  await rm(folder, { recursive: true, force: true });
});

describe('rackwright import and export', () => {
  it('take a bar in as CSV and give it back, and the whole club as an archive byte for byte', async () => {
    const taken = await runCli(['import', 'bar', ...club('a.sqlite')], 'label,mass_kg\nLong bar,20.4\n');
    expect(taken).toMatchObject({ status: 0, stderr: '' });
    expect((await runCli(['export', 'bar', ...club('a.sqlite')])).stdout).toContain('Long bar,20.4');

    const archive = await runCli(['export', 'archive', ...club('a.sqlite')]);
    const restored = await runCli(['import', 'archive', '--replace', ...club('b.sqlite')], archive.stdout);
    expect(restored.status).toBe(0);
    expect((await runCli(['export', 'archive', ...club('b.sqlite')])).stdout).toBe(archive.stdout);
  });

  it('name line and column of a wrong cell and take nothing of the file', async () => {
    const file = join(folder, 'bars.csv');
    await writeFile(file, 'label,mass_kg\nShort bar,15\nLight bar,heavy\n');
    const refused = await runCli(['import', 'bar', file, ...club('c.sqlite')]);
    expect(refused).toMatchObject({ status: 2, stdout: '' });
    expect(refused.stderr).toMatch(/^Line 3, mass_kg: /);
    expect((await runCli(['export', 'bar', ...club('c.sqlite')])).stdout).not.toContain('Short bar');
  });

  it('refuse to put an archive over a club unasked', async () => {
    const refused = await runCli(['import', 'archive', ...club('d.sqlite')], '{}');
    expect(refused.status).toBe(2);
    expect(existsSync(join(folder, 'd.sqlite'))).toBe(false);
  });

  it('do not found a club for a mistyped file name', async () => {
    const refused = await runCli(['export', 'archive', ...club('typo.sqlite')]);
    expect(refused).toMatchObject({ status: 1, stdout: '' });
    expect(refused.stderr).toContain('There is no club in');
    expect(existsSync(join(folder, 'typo.sqlite'))).toBe(false);
  });
});

describe('rackwright', () => {
  it('explains itself, and ends with 2 for a command or option that it does not have', async () => {
    const help = await runCli(['--help']);
    expect(help).toMatchObject({ status: 0, stderr: '' });
    for (const command of ['serve', 'day', 'band', 'import', 'export', 'compute'])
      expect(help.stdout).toContain(command);
    expect(await runCli(['sparkle'])).toMatchObject({ status: 2, stdout: '' });
    expect(await runCli(['band', '--sparkle'])).toMatchObject({ status: 2, stdout: '' });
  });
});
