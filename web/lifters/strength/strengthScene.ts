import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { liftWord } from '#contract/words/liftWords.ts';
import { recordsBySetup } from '#reckon/log/recordsBySetup.ts';
import { setFromBest } from '#reckon/strength/setFromBest.ts';
import type { SetMark, TimeScene } from '#web/charts/TimeScene.ts';
import type { Units } from '#web/parts/ViewUnits.tsx';
import type { LifterRecords } from '../lifterRecords.ts';
import { isDoubted, setSentence } from './setWords.ts';

/** An estimate with the log beside it, as a picture of strength over time. */
export function strengthScene(
  club: ClubRecords,
  own: LifterRecords,
  estimate: StrengthEstimate,
  sets: readonly LoggedSet[],
  units: Pick<Units, 'mass' | 'length'>,
): TimeScene {
  const { lift, history, observations } = estimate;
  const byId = setsById(own, sets);
  const records = new Set(recordsBySetup(sets, own.best).map(({ newest }) => newest.id));
  const marks = observations.map((observation): SetMark => {
    const set = byId.get(observation.setId);
    return {
      key: observation.setId,
      on: observation.on,
      straightKg: observation.straightKg,
      says: observation.says,
      doubted: isDoubted(observation),
      record: records.has(observation.setId),
      words: set ? setSentence(club, set, observation, units) : 'a set that is no longer in the log',
    };
  });
  return {
    title: `Strength of ${own.lifter.name}, ${liftWord(lift)}`,
    from: null,
    history,
    marks,
    meets: meetsOf(own, sets, history[0]?.on ?? ''),
    bodyMasses: weighings(own, sets, history[0]?.on ?? ''),
  };
}

/** Everything that may have acted on an estimate, by its id: logged sets, and bests as the singles that they were. */
export function setsById(own: LifterRecords, sets: readonly LoggedSet[]): Map<string, LoggedSet> {
  return new Map([...own.best.map(setFromBest), ...sets].map((set) => [set.id, set]));
}

/** Meets since the course begins, from the log and from bests, one a day. */
function meetsOf(own: LifterRecords, sets: readonly LoggedSet[], from: string): TimeScene['meets'] {
  const places = new Map<string, string>();
  for (const { platform, doneOn, place } of [...sets, ...own.best])
    if (platform && doneOn >= from) places.set(doneOn, places.get(doneOn) || place);
  return [...places].map(([on, place]) => ({ on, place })).sort((a, b) => a.on.localeCompare(b.on));
}

/** Weighings since the course begins: the club's own, and those written down with sets on other days. */
function weighings(own: LifterRecords, sets: readonly LoggedSet[], from: string): TimeScene['bodyMasses'] {
  const byDay = new Map<string, number>();
  for (const { doneOn, bodyMassKg, struckAt } of sets)
    if (bodyMassKg !== null && struckAt === null) byDay.set(doneOn, bodyMassKg);
  for (const { takenOn, massKg } of own.bodyMass) byDay.set(takenOn, massKg);
  return [...byDay]
    .filter(([on]) => on >= from)
    .map(([on, massKg]) => ({ on, massKg }))
    .sort((a, b) => a.on.localeCompare(b.on));
}
