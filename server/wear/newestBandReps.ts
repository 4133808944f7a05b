import type { BandReps } from '#contract/log/BandReps.ts';
import { repsOnBands } from '#contract/log/repsOnBands.ts';
import { readingDoorOf } from '#server/jobs/clubDoor.ts';
import type { RunWork } from '#server/jobs/jobs.ts';
import type { ClubStore } from '#store/ClubStore.ts';

/** Reps on each pair and day, up to a change. */
interface Counted {
  seq: number;
  reps: Map<string, BandReps>;
}

/**
 * How often each band pair was stretched on each day: the whole log is counted once, in a thread, and from then on what was logged,
 * struck or restored since is added or taken off.
 */
export function newestBandReps(store: ClubStore, run: RunWork): () => Promise<BandReps[]> {
  let newest: Promise<Counted> | undefined;

  async function countAll(): Promise<Counted> {
    const { seq, bandReps } = await run('countBandReps', { door: readingDoorOf(store) });
    return { seq, reps: new Map(bandReps.map((one) => [keyOf(one), one])) };
  }

  async function goOn(before: Counted): Promise<Counted> {
    const seq = await store.latestSeq();
    if (seq === before.seq) return before;
    const touched = await store.touchedSets(before.seq);
    if (touched === null) return countAll();
    const reps = new Map(before.reps);
    for (const { set, counted } of touched.sets) {
      const times = Number(set.struckAt === null) - Number(counted);
      for (const one of times === 0 ? [] : repsOnBands(set)) {
        const sum = (reps.get(keyOf(one))?.reps ?? 0) + times * one.reps;
        reps.set(keyOf(one), { ...one, reps: sum });
      }
    }
    return { seq: touched.seq, reps };
  }

  return async () => {
    const now = (newest?.then(goOn) ?? countAll()).catch((error) => {
      newest = undefined;
      throw error;
    });
    newest = now;
    const { reps } = await now;
    const counting = [...reps].filter(([, one]) => one.reps > 0);
    return counting.toSorted(([a], [b]) => (a < b ? -1 : 1)).map(([, one]) => one);
  };
}

function keyOf({ bandPairId, doneOn }: BandReps): string {
  return `${bandPairId} ${doneOn}`;
}
