import {
  chmodSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test, vi } from 'vitest';
import { writeOutput } from './writeOutput.ts';

function newFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), 'output-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  onTestFinished(() => void vi.restoreAllMocks());
  vi.spyOn(process.stderr, 'write').mockReturnValue(true);
  return folder;
}

test('what is exported is for its owner alone, also over a file that everybody could read', async () => {
  const folder = newFolder();
  const file = join(folder, 'log.csv');
  for (const content of ['first', 'second']) {
    await writeOutput(content, file);
    expect(readFileSync(file, 'utf8')).toBe(content);
    expect(statSync(file).mode & 0o777).toBe(0o600);
    chmodSync(file, 0o644);
  }
  expect(readdirSync(folder)).toEqual(['log.csv']);
});

test('a link in the place of the file is refused, and what it leads to stays as it is', async () => {
  const folder = newFolder();
  const [elsewhere, link] = [join(folder, 'elsewhere'), join(folder, 'log.csv')];
  writeFileSync(elsewhere, 'kept');
  symlinkSync(elsewhere, link);
  await expect(writeOutput('new', link)).rejects.toThrow(/cannot be written: it is a link/);
  expect(readFileSync(elsewhere, 'utf8')).toBe('kept');
  expect(lstatSync(link).isSymbolicLink()).toBe(true);
});

test('where it cannot be written, what was there stays and nothing half is left', async () => {
  const folder = newFolder();
  mkdirSync(join(folder, 'out'));
  await expect(writeOutput('new', join(folder, 'out'))).rejects.toThrow(/cannot be written: it is a folder/);
  await expect(writeOutput('new', join(folder, 'none/out'))).rejects.toThrow(/no such file or folder/);
  expect(readdirSync(folder)).toEqual(['out']);
});
