import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';

/** Runs `npm ci` when what is installed is not what package-lock.json asks for. */
export function ensureInstalled() {
  if (isInstalled()) return;
  console.log('Installing packages (the first time takes a minute or two) ...');
  const { status } = spawnSync('npm', ['ci', '--no-audit', '--no-fund'], {
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  if (status !== 0) {
    console.error('npm ci failed: the message above says why. Nothing was started.');
    process.exit(1);
  }
}

/** npm lists what it installed in node_modules/.package-lock.json, written last; optional packages may be absent. */
function isInstalled() {
  const installed = packagesOf('node_modules/.package-lock.json');
  const wanted = packagesOf('package-lock.json');
  if (!installed || !wanted) return false;
  return Object.entries(wanted).every(([path, { version, optional, peer }]) => {
    const found = installed[path];
    return path === '' || (found ? found.version === version : Boolean(optional || peer));
  });
}

function packagesOf(lockFile) {
  try {
    return JSON.parse(readFileSync(lockFile, 'utf8')).packages;
  } catch {
    return null;
  }
}
