import { existsSync } from 'node:fs';
import { mkdir, rename, writeFile } from 'node:fs/promises';
import { basename, dirname } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

/** Addresses of what a thread begins with and of its table of jobs, as Node reads them without help. */
export interface ThreadCode {
  entry: string;
  table: string;
}

const folder = fileURLToPath(new URL('../../.cache/threads/', import.meta.url));
const known = new Map<string, Promise<ThreadCode>>();

/**
 * A module that exports a table of jobs, and all that these read, translated once for all threads: where each thread translates file
 * by file, it takes a second and a half of processor before its first job. `entry` and `table` come out of one build, so that both
 * know the same classes of errors.
 */
export function threadCode(module: string): Promise<ThreadCode> {
  const found = known.get(module);
  if (found) return found;
  const code = translated(module);
  known.set(module, code);
  // A disk that is full now may have room later.
  code.catch(() => known.delete(module));
  return code;
}

async function translated(module: string): Promise<ThreadCode> {
  const { outputFiles } = await build({
    entryPoints: {
      entry: fileURLToPath(new URL('./runInThread.ts', import.meta.url)),
      table: fileURLToPath(module),
    },
    bundle: true,
    splitting: true,
    packages: 'external',
    platform: 'node',
    format: 'esm',
    target: 'node20',
    outdir: folder,
    outExtension: { '.js': '.mjs' },
    entryNames: '[name]-[hash]',
    chunkNames: 'parts/[name]-[hash]',
    write: false,
    logLevel: 'silent',
  });
  await Promise.all(outputFiles.map(({ path, contents }) => keep(path, contents)));
  const addressOf = (name: keyof ThreadCode) =>
    pathToFileURL(outputFiles.find(({ path }) => basename(path).startsWith(`${name}-`))!.path).href;
  return { entry: addressOf('entry'), table: addressOf('table') };
}

/** A name tells its content, and several servers may begin at once: a file is either there whole or not at all. */
async function keep(path: string, contents: Uint8Array): Promise<void> {
  if (existsSync(path)) return;
  await mkdir(dirname(path), { recursive: true });
  const half = `${path}.${process.pid}`;
  await writeFile(half, contents);
  await rename(half, path);
}
