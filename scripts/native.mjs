import { spawnSync } from 'node:child_process';
import { createRequire } from 'node:module';

/**
 * Builds the part of the program that reads club files anew where it is missing or was built for another version of Node.
 * @returns {string | null} what to say where that does not help; null: it can be loaded
 */
export function ensureNative({ load = loadHere, rebuild = rebuildHere, say = console.log } = {}) {
  if (load()) return null;
  say(
    `The part that reads club files was not built for this Node (${process.version}); building it anew ...`,
  );
  if (rebuild() && load()) return null;
  return `The part that reads club files cannot be built for this Node (${process.version}): the message above says why. Nothing was started, and no club file was touched. A Node of an even version number from 20 on usually has it ready: install one and run "npm start" again.`;
}

function loadHere() {
  try {
    const SqliteFile = createRequire(import.meta.url)('better-sqlite3');
    new SqliteFile(':memory:').close();
    return true;
  } catch {
    return false;
  }
}

function rebuildHere() {
  const { status } = spawnSync('npm', ['rebuild', 'better-sqlite3'], {
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  return status === 0;
}
