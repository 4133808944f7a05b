import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { expect, test } from 'vitest';

const heavy = /node_modules\/zod\/|^contract\/records\/allKinds|^core\/(band|rep|strength)\//;

test('neither what the program opens with nor the picture of a season brings the shapes that judge what is typed or what works out a load', async () => {
  const { metafile } = await build({
    absWorkingDir: fileURLToPath(new URL('..', import.meta.url)),
    entryPoints: ['web/main.tsx'],
    bundle: true,
    splitting: true,
    format: 'esm',
    jsx: 'automatic',
    outdir: 'never-written',
    write: false,
    metafile: true,
    loader: { '.woff2': 'empty' },
  });
  /** Every module that has to be read before the one with this file is. */
  const broughtBy = (file: string): string[] => {
    const files = new Set([file]);
    for (const one of files)
      for (const { path, kind } of metafile.outputs[one]!.imports)
        if (kind === 'import-statement') files.add(path);
    return [...files].flatMap((one) => Object.keys(metafile.outputs[one]!.inputs));
  };
  const fileOf = (module: string) =>
    Object.keys(metafile.outputs).find((file) => metafile.outputs[file]!.entryPoint === module)!;
  for (const [entry, shows] of [
    ['web/main.tsx', 'web/day/DayPage.tsx'],
    ['web/season/SeasonScreen.tsx', 'web/charts/SeasonRow.tsx'],
  ] as const) {
    const modules = broughtBy(fileOf(entry));
    expect(modules).toContain(shows);
    expect(modules.filter((module) => heavy.test(module))).toEqual([]);
  }
});
