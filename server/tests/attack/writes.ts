import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { squatSet } from '#store/tests/squatSet.ts';
import { ask as askOf, type Said } from './ask.ts';

export type Writes = ReturnType<typeof newWrites>;

/** No day sees more sets than a day can hold. */
export function dayOf(count: number): string {
  const first = Date.UTC(2024, 0, 1);
  return new Date(first + (count % 600) * 86_400_000).toISOString().slice(0, 10);
}

/** What clients do to a server that may be gone at any moment, and what of it was acknowledged. */
export function newWrites() {
  /** Ids of acknowledged bars and sets by the number of their change. */
  const acknowledged = new Map<string, number>();
  const undone = new Set<string>();
  const sent = new Set<string>();
  const failed: string[] = [];
  let made = 0;
  let replacements = 0;
  let replacing = 0;
  let readMeanwhile = 0;
  let snapshots = 0;
  let gaveUp = 0;

  async function ask(url: string, method: string, path: string, body?: unknown) {
    const said = await askOf(url, method, path, body);
    // Who waits for a minute behind others that hold the file is told so, and nothing of theirs is half there.
    if (
      said.status === 503 &&
      /is busy: this program|is held by another|Something else holds/.test(said.text)
    )
      gaveUp += 1;
    else if (said.status >= 500) failed.push(`${method} ${path}: ${said.status} ${said.text}`);
    return said;
  }

  async function addBar(url: string) {
    const { ok, json } = await ask(url, 'POST', '/records/bar', { label: `Bar ${made++}`, massKg: 20 });
    if (ok) acknowledged.set(json.record.id, json.seq);
  }

  /** Sent again without waiting, and once more where no answer came; it is one set all the same. */
  async function logSet(url: string) {
    const id = `set-${made++}`;
    sent.add(id);
    const set = squatSet({ id, doneOn: dayOf(made) });
    const log = () => ask(url, 'POST', '/sets', { sets: [set] });
    const answers = await Promise.allSettled([log(), log()]);
    for (const answer of answers) {
      if (answer.status === 'fulfilled' && answer.value.ok) acknowledged.set(id, answer.value.json.seq);
    }
  }

  async function undo(url: string) {
    const [id, seq] = [...acknowledged].at(-1) ?? [];
    if (id === undefined) return;
    try {
      if ((await ask(url, 'POST', `/undo/${seq}`)).ok) undone.add(id);
    } catch (error) {
      // No answer came; it may be done all the same.
      undone.add(id);
      throw error;
    }
  }

  async function during(replace: () => Promise<Said>): Promise<void> {
    replacing += 1;
    try {
      if ((await replace()).ok) replacements += 1;
    } finally {
      replacing -= 1;
    }
  }

  async function byArchive(url: string): Promise<void> {
    const { json: archive } = await ask(url, 'GET', '/archive');
    await during(() => ask(url, 'POST', '/archive?replace=1', archive));
  }

  /** What is saved between the two is in the copy that is kept of what the snapshot takes the place of. */
  async function bySnapshot(url: string): Promise<void> {
    const { ok, json } = await ask(url, 'POST', '/copies');
    if (!ok) return;
    snapshots += 1;
    await during(() => ask(url, 'POST', `/copies/${json.name}/restore`));
  }

  return {
    acknowledged: () => acknowledged.size,
    replacements: () => replacements,
    step(url: string, client: number): Promise<void> {
      const what = (made + client) % 7;
      return what === 0 ? undo(url) : what < 4 ? addBar(url) : logSet(url);
    },
    /** By an archive or a snapshot, one after the other. */
    replace: (url: string) => (replacements % 2 === 0 ? byArchive(url) : bySnapshot(url)),
    async read(url: string): Promise<void> {
      const { ok } = await ask(url, 'GET', '/club');
      if (ok && replacing > 0) readMeanwhile += 1;
    },
    verdict(ids: ReadonlySet<string>, sets: readonly LoggedSet[]) {
      const lost = [...acknowledged.keys()].filter((id) => !ids.has(id) && !undone.has(id));
      const logged = sets.map(({ id }) => id).filter((id) => id.startsWith('set-'));
      const odd = logged.filter((id, i) => !sent.has(id) || logged.indexOf(id) !== i);
      return {
        acknowledged: acknowledged.size,
        replacements,
        snapshots,
        gaveUp,
        readMeanwhile,
        lost,
        odd,
        failed,
      };
    },
  };
}
