import { isSameStart } from '#contract/day/isSameStart.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { daysLater } from '#contract/words/dayWords.ts';
import { lastTimeOf } from '#reckon/log/lastTimeOf.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { newestKept } from './newestKept.ts';

type Asked = Parameters<typeof lastTimeOf>[1] & { ofDay: string };

/** What a lifter did the last time, see `lastTimeOf`, read once as long as nothing of that lifter's log before the day is touched. */
export function keptLastTimes(store: ClubStore): (lifterId: string, asked: Asked) => Promise<LoggedSet[]> {
  const kept = newestKept<{ lifterId: string; before: string; sets: LoggedSet[] }>(mostKept);
  let upTo = 0;

  async function forgetTouched(): Promise<void> {
    const touched = await store.touchedSets(upTo);
    if (touched === null) {
      kept.forget(() => true);
      upTo = await store.latestSeq();
      return;
    }
    upTo = Math.max(upTo, touched.seq);
    for (const { set } of touched.sets)
      kept.forget((one) => one.lifterId === set.lifterId && set.doneOn < one.before);
  }

  return async (lifterId, asked) => {
    await forgetTouched();
    const key = JSON.stringify([lifterId, asked]);
    const known = kept.get(key);
    if (known) return known.sets;
    const then = upTo;
    const sets = await lastTime(store, lifterId, asked);
    // What was touched while the log was read may not be in it.
    if (then === upTo) kept.set(key, { lifterId, before: asked.before, sets });
    return sets;
  };
}

/** Three days of sixty. */
const mostKept = 200;

/** The log is read backwards and no farther than to the last time. */
async function lastTime(store: ClubStore, lifterId: string, asked: Asked): Promise<LoggedSet[]> {
  const { lift, start, before, ofDay } = asked;
  const to = daysLater(before, -1);
  for (let newest = firstRead; ; newest *= 4) {
    const log = await store.loggedSets({ lifterId, lift, to, newest });
    const isAll = log.length < newest;
    // Of the oldest day that was read some sets may be missing.
    const whole = isAll ? log : log.filter(({ doneOn }) => doneOn !== log[0]!.doneOn);
    const isFound = whole.some(
      (set) => set.struckAt === null && set.dayId !== ofDay && isSameStart(set.setup.start, start),
    );
    if (isFound || isAll) return lastTimeOf(whole, asked);
  }
}

/** A few weeks of a lift. */
const firstRead = 40;
