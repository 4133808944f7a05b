import { renameSync, writeFileSync } from 'node:fs';
import { openOneClub } from '#server/oneClub.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { ask } from './ask.ts';
import { newLife } from './life.ts';
import type { Draw, Tally } from './tally.ts';

/**
 * Two dozen writers change the same record of a real server, each from what it found, until it is killed; then its file is taken away,
 * another is put in its place, and it is put back. A change that was acknowledged and is silently overwritten, or that is acknowledged
 * while the file is away, is a fault.
 */
export async function rivals(path: string, draw: Draw): Promise<Tally> {
  const founding = await openOneClub(path, { name: 'a test' });
  await founding.importRecords(smallClub());
  await founding.close();
  const lives = [newLife(path), newLife(path)] as const;
  try {
    const changed = await changeTheSame(await lives[0].serve(), 24, draw(20, 60), lives[0].end);
    const away = await takeFileAway(path, await lives[1].serve());
    return {
      tried: { 'changes of one record': changed.tries, 'writes while the file was away': away.tries },
      survived: changed.acknowledged,
      faults: [...changed.faults, ...away.faults],
    };
  } finally {
    await Promise.all(lives.map(({ end }) => end()));
  }
}

async function changeTheSame(url: string, writers: number, until: number, kill: () => Promise<void>) {
  const id = smallClub().bar[0]!.id;
  const address = `/records/bar/${id}`;
  /** Each value that was found, and what acknowledged changes made of it. */
  const madeOf = new Map<string, string[]>();
  const faults: string[] = [];
  let [tries, acknowledged, isOver] = [0, 0, false];
  async function write(writer: number): Promise<void> {
    while (!isOver) {
      const { json: club } = await ask(url, 'GET', '/club');
      const found = club.records.bar.find((bar: { id: string }) => bar.id === id).note as string;
      const wanted = `${writer} ${++tries}`;
      const said = await ask(url, 'PATCH', address, { found: { note: found }, wanted: { note: wanted } });
      if (said.status >= 500) faults.push(`PATCH: ${said.status} ${said.text}`);
      if (!said.ok) continue;
      madeOf.set(found, [...(madeOf.get(found) ?? []), wanted]);
      acknowledged += 1;
      if (acknowledged < until || isOver) continue;
      isOver = true;
      await kill();
    }
  }
  // Whoever writes when it is killed hears nothing.
  await Promise.all(Array.from({ length: writers }, (_, i) => write(i).catch(() => {})));
  for (const [found, made] of madeOf)
    if (made.length > 1) faults.push(`"${found}" was overwritten without a word: ${made.join(', ')}`);
  return { tries, acknowledged, faults };
}

/** The file, its write-ahead log and the index of that, one by one and together; each time a write is tried. */
async function takeFileAway(path: string, url: string) {
  const faults: string[] = [];
  const parts = ['', '-wal', '-shm'].map((end) => path + end);
  let tries = 0;
  const bars = async () => (await ask(url, 'GET', '/club')).json.records.bar.length as number;
  async function write(isHere: boolean): Promise<void> {
    const said = await ask(url, 'POST', '/records/bar', { label: `Away ${++tries}`, massKg: 20 });
    if (said.ok !== isHere || (!said.ok && said.status !== 503))
      faults.push(`a write ${isHere ? 'with' : 'without'} its file: ${said.status} ${said.text}`);
  }
  await write(true);
  const before = await bars();
  for (const gone of [[parts[0]!], [parts[1]!], parts]) {
    for (const part of gone) renameSync(part, `${part}.away`);
    await write(false);
    if (gone[0] === path) writeFileSync(path, 'another file');
    await write(false);
    if ((await bars()) !== before) faults.push('what was saved is not read any more');
    for (const part of gone) renameSync(`${part}.away`, part);
  }
  await write(true);
  if ((await bars()) !== before + 1) faults.push('the file that was put back lacks what was saved');
  return { tries, faults };
}
