import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';
import type { Mutant } from './mutantsOf.ts';

const mutant: Mutant | undefined = JSON.parse(process.env['MUTANT'] ?? 'null') ?? undefined;

/** The file's own test first, then the short ones: a fault is seen soonest. */
class NearestFirst extends BaseSequencer {
  override sort(specifications: TestSpecification[]) {
    const own = mutant?.file.replace(/\.tsx?$/, '.test.');
    const isOwn = ({ moduleId }: TestSpecification) => own !== undefined && moduleId.startsWith(own);
    return Promise.resolve(specifications.toSorted((a, b) => Number(isOwn(b)) - Number(isOwn(a))));
  }
}

/** Tests of a tree in which one place reads otherwise. The change is made as the file is loaded: the disk keeps what it has. */
export default defineConfig({
  plugins: [
    {
      name: 'one-change',
      enforce: 'pre',
      transform: (code, id) =>
        mutant && id === mutant.file
          ? { code: code.slice(0, mutant.start) + mutant.to + code.slice(mutant.end), map: null }
          : undefined,
    },
  ],
  test: {
    include: ['**/*.test.{ts,tsx}'],
    setupFiles: ['../../vitest.setup.ts', './firstFailure.ts'].map((file) =>
      fileURLToPath(new URL(file, import.meta.url)),
    ),
    // Whoever tries a mutant ends it by its own limit: on a busy machine a test that merely takes long would count as one that fails.
    testTimeout: 600_000,
    isolate: false,
    maxWorkers: 1,
    bail: 1,
    sequence: { sequencer: NearestFirst },
  },
});
