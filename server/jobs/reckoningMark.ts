import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/**
 * What tells one program that works answers out from another: all code that has a say in them, the libraries it stands on and
 * the Node that runs it. Nobody has to remember to count a number up; a change that changes nothing costs one working out anew.
 */
export async function reckoningMark(root = program): Promise<string> {
  const code = await Promise.all(floors.map((floor) => codeIn(root, floor)));
  const files = ['package-lock.json', ...code.flat()].toSorted();
  const contents = await Promise.all(files.map((file) => readFile(join(root, file))));
  const sum = createHash('sha256').update(`${process.version} ${process.arch}`);
  files.forEach((file, i) => {
    sum.update(`\n${file} ${contents[i]!.length}\n`).update(contents[i]!);
  });
  return sum.digest('hex').slice(0, 32);
}

const program = fileURLToPath(new URL('../../', import.meta.url));
/** All but what only shows answers or invents a club. */
const floors = ['core', 'contract', 'reckon', 'store', 'server'];

async function codeIn(root: string, floor: string): Promise<string[]> {
  const entries = await readdir(join(root, floor), { recursive: true });
  return entries.filter((name) => isCode.test(name) && !isTest.test(name)).map((name) => join(floor, name));
}

const isCode = /\.(ts|mjs|json)$/;
const isTest = /\.test\.ts$|(^|[\\/])tests[\\/]|^checks[\\/]/;
