/**
 * Read before a program (`node --import`): ends it with -9 just before, or in the midst of, the step with the number in `KILL_AT_STEP`. A step is whatever
 * touches the disk: a call of a file, a statement of a database. Without that number nothing is ended. Where `STEPS_TO` names a file, their number
 * is written there at the end.
 */
import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';
import SqliteFile from 'better-sqlite3';

const { KILL_AT_STEP: killAt, STEPS_TO: stepsTo } = process.env;
const writeSteps = fs.writeFileSync;
let steps = 0;

const here = () => {
  steps += 1;
  return String(steps) === killAt;
};
const end = () => {
  process.kill(process.pid, 'SIGKILL');
};

/** `half` does what a program has done of the step that is ended in its midst. */
function counted(object, name, half = () => {}) {
  const does = object[name];
  object[name] = function step(...args) {
    if (here()) {
      half.apply(this, args);
      end();
    }
    return does.apply(this, args);
  };
}

const halfOf = (text) => text.slice(0, Math.floor(text.length / 2));
const { readFileSync, writeFileSync, writeSync } = fs;
const halfACopy = (from, to) => writeFileSync(to, halfOf(readFileSync(from)));

for (const name of ['openSync', 'closeSync', 'fsyncSync', 'linkSync', 'mkdirSync', 'renameSync', 'rmSync'])
  counted(fs, name);
counted(fs, 'copyFileSync', halfACopy);
for (const name of ['open', 'rename', 'rm', 'mkdtemp']) counted(fs.promises, name);
counted(fs.promises, 'copyFile', halfACopy);
for (const name of ['exec', 'prepare', 'pragma', 'close']) counted(SqliteFile.prototype, name);

const handle = await fs.promises.open(process.execPath);
const handles = Object.getPrototypeOf(handle);
await handle.close();
for (const name of ['sync', 'close']) counted(handles, name);
counted(handles, 'writeFile', function halfAText(text) {
  writeSync(this.fd, halfOf(text));
});
syncBuiltinESMExports();

steps = 0;
if (stepsTo) process.on('exit', () => writeSteps(stepsTo, String(steps)));
