import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';

const places = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome'];

/** Where the browser for the walks is; installs Debian's where that is missing and may be done. Null: none. */
export function findChromium() {
  return found() ?? (installFromDebian() ? found() : null);
}

export const chromiumMissing = [
  'The browser walks need Chromium, and none was found.',
  'On Debian or Ubuntu run "sudo apt-get install chromium"; elsewhere set CHROMIUM to the path of a Chromium you have.',
].join('\n');

function found() {
  return [process.env.CHROMIUM, ...places].find((path) => path && existsSync(path)) ?? null;
}

function installFromDebian() {
  const mayInstall = process.getuid?.() === 0 && spawnSync('apt-get', ['--version']).status === 0;
  if (!mayInstall) return false;
  console.log('Installing Chromium for the browser walks ...');
  return [
    ['update', '-qq'],
    ['install', '-y', '-qq', '--no-install-recommends', 'chromium'],
  ].every(
    (args) =>
      spawnSync('apt-get', args, {
        stdio: ['ignore', 'ignore', 'inherit'],
        env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
      }).status === 0,
  );
}
