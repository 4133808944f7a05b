import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

const sources = ['web', 'core', 'contract', 'package-lock.json'];
const stampFile = 'web/dist/.built-from';

/** Builds the screens into web/dist when any file they are made from has changed since. */
export async function buildWebWhenStale() {
  const fingerprint = hashOf(sources);
  if (
    existsSync('web/dist/index.html') &&
    existsSync(stampFile) &&
    readFileSync(stampFile, 'utf8') === fingerprint
  ) {
    return;
  }
  console.log('Building the screens ...');
  const { build } = await import('vite');
  await build({ root: 'web', configFile: 'web/vite.config.ts', logLevel: 'warn' });
  writeFileSync(stampFile, fingerprint);
}

function hashOf(roots) {
  const hash = createHash('sha256');
  for (const path of roots.flatMap(filesUnder)) hash.update(path).update('\0').update(readFileSync(path));
  return hash.digest('hex');
}

/** Files under a path in a fixed order, without what a build leaves and what only tests read. */
function filesUnder(path) {
  if (path.endsWith('.json')) return [path];
  return readdirSync(path, { withFileTypes: true })
    .toSorted((a, b) => (a.name < b.name ? -1 : 1))
    .flatMap((entry) => {
      const inside = join(path, entry.name);
      if (entry.isDirectory()) return entry.name === 'dist' ? [] : filesUnder(inside);
      return /\.test\.tsx?$/.test(entry.name) ? [] : [inside];
    });
}
