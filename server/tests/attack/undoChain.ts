import { openOneClub } from '#server/oneClub.ts';
import { smallClub } from '#store/tests/smallClub.ts';
import { squatSet } from '#store/tests/squatSet.ts';
import { ask } from './ask.ts';
import { newLife } from './life.ts';
import type { Draw, Tally } from './tally.ts';

/** Changes are made, undone and done again one by one while real servers are killed in between: the club is each time what it was then. */
export async function undoChain(path: string, draw: Draw): Promise<Tally> {
  const founding = await openOneClub(path, { name: 'a test' });
  await founding.importRecords(smallClub());
  await founding.close();
  const tally: Tally = { tried: { 'undone and done again': 0 }, survived: 0, faults: [] };
  const lives = Array.from({ length: 4 }, () => newLife(path));
  try {
    let url = await lives[0]!.serve();
    let life = 0;
    const die = async () => {
      if (life === lives.length - 1) return;
      await lives[life]!.end();
      life += 1;
      url = await lives[life]!.serve();
    };
    const states = [await stateOf(url)];
    for (let i = draw(8, 20); i > 0; i -= 1) {
      const said = await anyChange(url, draw, i);
      if (said.ok) states.push(await stateOf(url));
      else tally.faults.push(`a change was refused: ${said.text}`);
    }
    await die();
    const dies = new Set([draw(1, states.length - 1), draw(1, states.length - 1)]);
    const goes = async (way: 'undo' | 'redo', wanted: string) => {
      const { json } = await ask(url, 'GET', '/changes?most=1');
      const said = await ask(url, 'POST', `/undo/${json[way]?.seq}`);
      tally.tried['undone and done again']! += 1;
      if (!said.ok) tally.faults.push(`${way}: ${said.text}`);
      else if ((await stateOf(url)) !== wanted) tally.faults.push(`${way}: the club is not what it was`);
      else tally.survived += 1;
    };
    for (let i = states.length - 2; i >= 0; i -= 1) {
      if (dies.has(i + 1)) await die();
      await goes('undo', states[i]!);
    }
    for (let i = 1; i < states.length; i += 1) await goes('redo', states[i]!);
    return tally;
  } finally {
    await Promise.all(lives.map(({ end }) => end()));
  }
}

function anyChange(url: string, draw: Draw, i: number) {
  const [bar] = smallClub().bar;
  switch (draw(0, 2)) {
    case 0:
      return ask(url, 'POST', '/records/bar', { label: `Bar ${i}`, massKg: 20 });
    case 1:
      return ask(url, 'PUT', `/records/bar/${bar!.id}`, { ...bar, id: undefined, note: `Change ${i}` });
    default:
      return ask(url, 'POST', '/sets', { sets: [squatSet({ note: `Set ${i}` })] });
  }
}

/** All records and which sets count. */
async function stateOf(url: string): Promise<string> {
  const [{ json: club }, { json: log }] = [await ask(url, 'GET', '/club'), await ask(url, 'GET', '/sets')];
  const counts = log.sets.filter(({ struckAt }: { struckAt: string | null }) => struckAt === null);
  return JSON.stringify([club.records, counts.map(({ id }: { id: string }) => id)]);
}
