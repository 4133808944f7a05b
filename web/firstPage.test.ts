import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { expect, test } from 'vitest';

test('what the program opens with brings neither the shapes that judge what is typed nor what works out a load', async () => {
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
  const opensWith = new Set(['never-written/main.js']);
  for (const file of opensWith)
    for (const { path, kind } of metafile.outputs[file]!.imports)
      if (kind === 'import-statement') opensWith.add(path);
  const modules = [...opensWith].flatMap((file) => Object.keys(metafile.outputs[file]!.inputs));
  expect(modules).toContain('web/day/DayPage.tsx');
  const heavy = /node_modules\/zod\/|^contract\/records\/allKinds|^core\/(band|rep|strength)\//;
  expect(modules.filter((module) => heavy.test(module))).toEqual([]);
});
