import { dirname, join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { cutShort } from './cutShort.ts';
import { newClubPath } from './newClubPath.ts';
import { dumps } from './olderClubs.ts';
import { type StepKills, stepKills } from './stepKills.ts';

let kills: StepKills;
beforeAll(async () => {
  kills = await stepKills();
});
afterAll(() => kills.dispose());

/** Which of so many steps a test kills at. */
type Which = (steps: number) => number[];

/** So many that lie evenly among them, the last one among these. */
function spread(most: number): Which {
  return (steps) => {
    const count = Math.min(steps, most);
    return Array.from({ length: count }, (_, i) => Math.round(((i + 1) * steps) / count));
  };
}

function last(count: number): Which {
  return (steps) => Array.from({ length: Math.min(steps, count) }, (_, i) => steps - i);
}

/** `npm run attack` kills at any step; here at some, and where files are moved at each. */
test.each<[what: string, how: string, which: Which]>([
  ['found', 'a club is made', spread(6)],
  ['log', 'sets are logged', spread(4)],
  ['takeIn', 'a file of sets is taken in', spread(6)],
  ['replace', 'an archive replaces the club', spread(8)],
  ['snapshot', 'a snapshot is taken', spread(10)],
  ['restore', 'a copy takes the place of a damaged file', last(9)],
  ['finishRestore', 'who opens the club ends a restoring', last(6)],
  [`open ${dumps[0]}`, 'the oldest club is brought to today', spread(4)],
  [`open ${dumps.at(-1)}`, 'the club of before is brought to today', spread(4)],
])('killed while %s (%s): what is left is whole, as it was or as it was to be', async (what, _how, which) => {
  const path = newClubPath();
  const look = await cutShort[what]!(path);
  const seen = new Set<string>();
  for (const step of which(await kills.stepsOf(what, dirname(path))))
    seen.add(await look(join(await kills.killedAt(what, dirname(path), step), 'club.sqlite')));
  // The last step comes after all that lasts.
  expect(seen).toContain('new');
});
