import { spawnSync } from 'node:child_process';
import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { projectRoot } from './projectRoot.ts';
import { whyNotOpenClub } from './whyNotOpenClub.ts';

test.each([
  [Object.assign(new Error('built against NODE_MODULE_VERSION 115'), { code: 'ERR_DLOPEN_FAILED' })],
  [new Error('Could not locate the bindings file. Tried: better_sqlite3.node')],
  [Object.assign(new Error("Cannot find package 'better-sqlite3'"), { code: 'ERR_MODULE_NOT_FOUND' })],
])('where the program lacks a part of its own, the file is not blamed: %s', (error) => {
  const said = whyNotOpenClub('club.sqlite', error);
  expect(said).toContain('npm rebuild better-sqlite3');
  expect(said).not.toContain('club.sqlite');
});

test.each([
  ['EACCES', 'may not write'],
  ['ENOSPC', 'full'],
  ['EISDIR', 'folder'],
])('the trouble with a file is named: %s', (code, word) => {
  const said = whyNotOpenClub('club.sqlite', Object.assign(new Error('no'), { code }));
  expect(said).toMatch(/^\S*club\.sqlite cannot be opened as a club: .*\.$/);
  expect(said).toContain(word);
});

/** A folder with a database library that cannot be loaded, and an npm that mends it or does not. */
function installation(npm: string): string {
  const folder = mkdtempSync(join(tmpdir(), 'native-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  const library = join(folder, 'node_modules/better-sqlite3');
  mkdirSync(library, { recursive: true });
  writeFileSync(
    join(library, 'index.js'),
    'throw Object.assign(new Error("other Node"), { code: "ERR_DLOPEN_FAILED" });',
  );
  writeFileSync(
    join(folder, 'npm'),
    `#!/bin/sh\necho "$@" >> "${folder}/asked"\n${npm.replaceAll('LIBRARY', library)}\n`,
  );
  chmodSync(join(folder, 'npm'), 0o755);
  const source = join(projectRoot, 'scripts/native.mjs');
  writeFileSync(
    join(folder, 'try.mjs'),
    `import { readFileSync, writeFileSync } from 'node:fs';
     writeFileSync('native.mjs', readFileSync(${JSON.stringify(source)}));
     const { ensureNative } = await import('./native.mjs');
     console.log(JSON.stringify({ lacking: ensureNative() }), readFileSync('asked', 'utf8'));`,
  );
  return folder;
}

function started(folder: string): string {
  const { stdout } = spawnSync(process.execPath, ['try.mjs'], {
    cwd: folder,
    env: { ...process.env, PATH: `${folder}:${process.env.PATH}` },
    encoding: 'utf8',
  });
  return stdout;
}

test('npm start builds a library of another Node anew and goes on; where that fails it says so and starts nothing', () => {
  const mended = started(installation(`echo 'module.exports = class { close() {} };' > LIBRARY/index.js`));
  expect(mended).toContain('{"lacking":null}');
  expect(mended).toContain('rebuild better-sqlite3');
  const failed = started(installation('exit 1'));
  expect(failed).toContain('Nothing was started, and no club file was touched.');
});
