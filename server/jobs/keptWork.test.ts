import { existsSync, readdirSync } from 'node:fs';
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, onTestFinished, test, vi } from 'vitest';
import { testApp } from '#server/tests/testApp.ts';
import { type KeptAnswers, keptAnswers, keptFolderOf } from './keptAnswers.ts';
import { keptWork } from './keptWork.ts';
import { type Gate, newGate, open, work as testJobs } from './tests/testJobs.ts';
import { workThreads } from './threads.ts';
import { AskerLeft } from './waiting.ts';

/** Answers `key basis` by a real thread once the gate of that is opened; `begun` are those whose turn came. */
function gated(width: 1 | 2, endsWhenLeft: boolean) {
  const { run, close } = workThreads(testJobs);
  onTestFinished(close);
  const world = { basis: 'old' };
  const begun: string[] = [];
  const gates = new Map<string, Gate>();
  const waitingFor = new Map<string, () => void>();
  const gateOf = (answer: string) => {
    const gate = gates.get(answer) ?? newGate();
    gates.set(answer, gate);
    return gate;
  };
  const works = keptWork({
    most: 9,
    width,
    endsWhenLeft,
    keyOf: (key: string) => key,
    restsOn: () => ({ basis: [world.basis] }),
    work(key, { basis }, { signal }) {
      const answer = `${key} ${basis.join()}`;
      begun.push(answer);
      waitingFor.get(answer)?.();
      const name = width === 1 ? 'waitAtNarrow' : 'waitAtWide';
      return run(name, { gate: gateOf(answer), answer }, { signal });
    },
  });
  return {
    works,
    world,
    begun,
    open: (answer: string) => open(gateOf(answer)),
    async untilBegun(answer: string) {
      if (!begun.includes(answer)) await new Promise<void>((done) => waitingFor.set(answer, done));
    },
  };
}

test('two who ask for the same at the same time, and a third while it is worked on, are one run; a fourth after it none', async () => {
  const { works, begun, open: end, untilBegun } = gated(2, false);
  const two = [works.ask('a'), works.ask('a')];
  await untilBegun('a old');
  const third = works.ask('a');
  end('a old');
  expect(await Promise.all([...two, third])).toEqual(['a old', 'a old', 'a old']);
  expect(await works.ask('a')).toBe('a old');
  expect(begun).toEqual(['a old']);
});

test('an answer that is begun later for a newer basis stays when the older one lands after it', async () => {
  const { works, world, begun, open: end, untilBegun } = gated(2, false);
  const older = works.ask('a');
  await untilBegun('a old');
  world.basis = 'new';
  const newer = works.ask('a');
  end('a new');
  expect(await newer).toBe('a new');
  end('a old');
  // Who waited for it gets it; nobody else does.
  expect(await older).toBe('a old');
  expect(works.newest('a')).toBe('a new');
  expect(await works.ask('a')).toBe('a new');
  expect(begun).toEqual(['a old', 'a new']);
});

test('not even once the world has gone on, nor where it has gone back, does an older answer land over a newer', async () => {
  const { works, world, open: end, untilBegun } = gated(2, false);
  const older = works.ask('a');
  await untilBegun('a old');
  world.basis = 'new';
  const newer = works.ask('a');
  await untilBegun('a new');
  world.basis = 'newest';
  end('a new');
  await newer;
  end('a old');
  await older;
  expect(works.newest('a')).toBe('a new');

  world.basis = 'left';
  const left = works.ask('a');
  await untilBegun('a left');
  world.basis = 'new';
  expect(await works.ask('a')).toBe('a new');
  end('a left');
  await left;
  expect(works.newest('a')).toBe('a new');
});

test('an answer for what holds again is newer than all that was begun between', async () => {
  const { works, world } = gated(1, false);
  const first = await works.stand('a');
  world.basis = 'new';
  const between = await works.stand('a');
  world.basis = 'old';
  const again = await works.stand('a');
  works.land('a', again, 'again');
  works.land('a', first, 'first');
  expect(works.land('a', between, 'between')).toBe('between');
  expect(works.newest('a')).toBe('first');
});

test('what waits is done as things are when its turn comes, for all who asked meanwhile', async () => {
  const { works, world, begun, open: end, untilBegun } = gated(1, false);
  const first = works.ask('a');
  await untilBegun('a old');
  const before = works.ask('b');
  world.basis = 'new';
  const after = works.ask('b');
  end('a old');
  end('b new');
  expect(await Promise.all([first, before, after])).toEqual(['a old', 'b new', 'b new']);
  expect(begun).toEqual(['a old', 'b new']);
});

test('what waits and holds again when its turn comes is not done again', async () => {
  const { works, world, begun, open: end, untilBegun } = gated(1, false);
  const first = works.ask('a');
  end('a old');
  await first;
  const other = works.ask('b');
  await untilBegun('b old');
  world.basis = 'new';
  const waits = works.ask('a');
  // It has asked once the world was looked at for it.
  await works.stand('a');
  world.basis = 'old';
  end('b old');
  expect(await Promise.all([other, waits])).toEqual(['b old', 'a old']);
  expect(begun).toEqual(['a old', 'b old']);
});

test('a run whose last asker goes ends at once where that is wanted, and the next gets its thread', async () => {
  const { works, begun, open: end, untilBegun } = gated(1, true);
  const [one, other] = [new AbortController(), new AbortController()];
  const askers = [one, other].map(({ signal }) => works.ask('a', { signal }));
  await untilBegun('a old');
  const next = works.ask('b');
  end('b old');
  one.abort();
  await expect(askers[0]).rejects.toThrow(AskerLeft);
  // One still waits: nothing else is begun.
  expect(begun).toEqual(['a old']);
  other.abort();
  // Whoever asks now does not join what ends.
  const again = works.ask('a');
  await expect(askers[1]).rejects.toThrow(AskerLeft);
  end('a old');
  expect(await Promise.all([next, again])).toEqual(['b old', 'a old']);
  expect(begun.toSorted()).toEqual(['a old', 'a old', 'b old']);
});

test('otherwise it goes on and is kept; one that still waits for its turn is dropped', async () => {
  const { works, begun, open: end, untilBegun } = gated(1, false);
  const gone = new AbortController();
  const asked = works.ask('a', { signal: gone.signal });
  await untilBegun('a old');
  const waits = works.ask('b', { signal: gone.signal });
  const last = works.ask('c');
  // All have asked once the world was looked at for the last of them.
  await works.stand('c');
  gone.abort();
  await expect(asked).rejects.toThrow(AskerLeft);
  await expect(waits).rejects.toThrow(AskerLeft);
  end('a old');
  end('c old');
  expect(await last).toBe('c old');
  expect(await works.ask('a')).toBe('a old');
  expect(begun).toEqual(['a old', 'c old']);
});

test('a fault goes to all who wait for it, and who asks next begins anew', async () => {
  const { run, close } = workThreads(testJobs);
  onTestFinished(close);
  let runs = 0;
  const works = keptWork({
    most: 1,
    width: 1,
    keyOf: () => 'one',
    restsOn: (_of: null) => ({ basis: [] }),
    work: () => (++runs === 1 ? run('fail', 'No bar.') : run('echo', 'a bar')),
  });
  const asked = await Promise.allSettled([works.ask(null), works.ask(null)]);
  expect(asked).toMatchObject([
    { status: 'rejected', reason: { message: 'fail failed in its thread: No bar.' } },
    { status: 'rejected' },
  ]);
  expect(await works.ask(null)).toBe('a bar');
  expect(runs).toBe(2);
});

test('how far a run is arrives from its thread', async () => {
  const { run, close } = workThreads(testJobs);
  onTestFinished(close);
  const works = keptWork({
    most: 1,
    width: 1,
    keyOf: () => 'one',
    restsOn: (_of: null) => ({ basis: [] }),
    work: (_of, _now, { tell }) => run('count', 3, { tell }),
  });
  expect(works.progress(null)).toEqual({ done: 0, total: 0 });
  await works.ask(null);
  expect(works.progress(null)).toEqual({ done: 3, total: 3 });
});

/** Works in two, the second resting on the first's answer, on a folder; `done` are the runs of the works themselves. */
function overFolder(keepIn: KeptAnswers, world: { basis: string }) {
  const done: string[] = [];
  const parts = { most: 2, width: 1, keyOf: (key: string) => key };
  const first = keptWork({
    ...parts,
    keepIn: keepIn.of('first', 2),
    restsOn: () => ({ basis: [world.basis, 1] }),
    work: async (key) => {
      done.push(`first ${key}`);
      return { kg: new Map([[key, 0.1]]) };
    },
  });
  const second = keptWork({
    ...parts,
    keepIn: keepIn.of('second', 2),
    restsOn: async (key) => ({ basis: [await first.ask(key)] }),
    work: async (key) => {
      done.push(`second ${key}`);
      return `of ${key}`;
    },
  });
  return { first, second, done };
}

test('what is kept in a folder outlives the run, also where it rests on an answer that is kept, until its basis is another', async () => {
  const { folder } = await testApp();
  const keepIn = () => keptAnswers(join(folder, 'club'), 'now');
  const world = { basis: 'old' };
  const kept = keepIn();
  const before = overFolder(kept, world);
  expect(await before.second.ask('a')).toBe('of a');
  expect(before.done).toEqual(['first a', 'second a']);

  await kept.written();
  const after = overFolder(keepIn(), world);
  expect(await after.second.ask('a')).toBe('of a');
  expect(await after.first.ask('a')).toEqual({ kg: new Map([['a', 0.1]]) });
  expect(after.done).toEqual([]);

  world.basis = 'new';
  const changed = overFolder(keepIn(), world);
  expect(changed.first.newest('a')).toEqual({ kg: new Map([['a', 0.1]]) });
  expect(await changed.second.ask('a')).toBe('of a');
  expect(changed.done).toEqual(['first a', 'second a']);
});

test('of more keys than are kept the one put the longest ago is worked out again', async () => {
  const { folder } = await testApp();
  const keepIn = () => keptAnswers(join(folder, 'club'), 'now');
  const world = { basis: 'old' };
  const kept = keepIn();
  const before = overFolder(kept, world);
  for (const key of ['a', 'b', 'c']) await before.first.ask(key);
  await kept.written();
  const after = overFolder(keepIn(), world);
  for (const key of ['c', 'b', 'a']) await after.first.ask(key);
  expect(after.done).toEqual(['first a']);
});

test('a disk that takes nothing hinders no answer', async () => {
  const { folder } = await testApp();
  const complaints = vi.spyOn(console, 'error').mockImplementation(() => {});
  // A file stands where the folder would be.
  await writeFile(join(folder, 'club.kept'), '');
  const kept = keptAnswers(join(folder, 'club'), 'now');
  const works = overFolder(kept, { basis: 'old' });
  expect(await works.second.ask('a')).toBe('of a');
  expect(await works.second.ask('b')).toBe('of b');
  await kept.written();
  // Said once, not at every answer.
  expect(complaints).toHaveBeenCalledTimes(1);
});

test('who puts an answer waits for no disk: the newest is found at once, and alone is written', async () => {
  const { folder } = await testApp();
  const path = join(folder, 'club');
  const kept = keptAnswers(path, 'now');
  const answers = kept.of('work', 2);
  for (const answer of [1, 2, 3]) answers.put('a', { basis: [], answer, mark: null });
  expect(existsSync(keptFolderOf(path))).toBe(false);
  expect(answers.find('a')?.answer).toBe(3);
  await kept.written();
  for (const key of ['b', 'c']) answers.put(key, { basis: [], answer: key, mark: null });
  await kept.written();
  const again = keptAnswers(path, 'now').of('work', 2);
  expect(['a', 'b', 'c'].map((key) => again.find(key)?.answer)).toEqual([undefined, 'b', 'c']);
  expect(readdirSync(join(keptFolderOf(path), 'now', 'work'))).toHaveLength(2);
});
