import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { sources } from './buildScreens.ts';
import { projectRoot } from './projectRoot.ts';

it('looks for changes in every room that the screens read', () => {
  const read = sources.flatMap((room) =>
    readdirSync(join(projectRoot, room), { recursive: true, encoding: 'utf8' })
      .filter((name) => /(?<!\.test)\.tsx?$/.test(name))
      .flatMap(
        (name) => readFileSync(join(projectRoot, room, name), 'utf8').match(/(?<=from '#)\w+(?=\/)/g) ?? [],
      ),
  );
  expect([...new Set(read)].toSorted()).toEqual(sources.toSorted());
});
