import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onTestFinished } from 'vitest';

/** Where a club file may be made; its folder goes when the test ends. */
export function newClubPath(): string {
  const folder = mkdtempSync(join(tmpdir(), 'club-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  return join(folder, 'club.sqlite');
}
