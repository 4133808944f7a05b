import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { packScreens } from './packScreens.ts';
import { projectRoot } from './projectRoot.ts';

/** The rooms that screens are made from. */
export const sources = ['core', 'contract', 'reckon', 'web'];
const built = join(projectRoot, 'web/dist');
const stampFile = join(built, '.built-from');

/** Builds the screens into web/dist when anything they are made from has changed since; says so by `announce`. */
export async function buildScreensWhenStale(announce: (sentence: string) => void): Promise<void> {
  const fingerprint = fingerprintOf([...sources.flatMap(filesUnder), 'package-lock.json']);
  if (existsSync(join(built, 'index.html')) && stamp() === fingerprint) return;
  announce('Building the screens ...');
  const { build } = await import('vite');
  const root = join(projectRoot, 'web');
  await build({ root, configFile: join(root, 'vite.config.ts'), logLevel: 'warn' });
  packScreens(built);
  writeFileSync(stampFile, fingerprint);
}

function stamp(): string | null {
  return existsSync(stampFile) ? readFileSync(stampFile, 'utf8') : null;
}

function fingerprintOf(files: string[]): string {
  const hash = createHash('sha256');
  for (const file of files) hash.update(`${file}\0`).update(readFileSync(join(projectRoot, file)));
  return hash.digest('hex');
}

/** Files under a folder of the project in a fixed order, without what a build leaves and what only tests read. */
function filesUnder(folder: string): string[] {
  return readdirSync(join(projectRoot, folder), { withFileTypes: true })
    .sort((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap((entry) => {
      const inside = `${folder}/${entry.name}`;
      if (entry.isDirectory()) return entry.name === 'dist' ? [] : filesUnder(inside);
      return /\.test\.tsx?$/.test(entry.name) ? [] : [inside];
    });
}
