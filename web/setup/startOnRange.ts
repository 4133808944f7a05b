import type { RecordOf } from '#contract/records/allKinds.ts';
import type { Setup } from '#contract/records/lift.ts';
import { hasHeight } from '#contract/words/liftWords.ts';
import { assembleHeights, type HeightRecords } from '#reckon/lifter/assembleHeights.ts';
import type { SetDraft } from './setDraft.ts';

/** Where the way up of a set begins in the lifter's competition range, and how long that range is. */
export interface StartOnRange {
  /** 0 at the bottom of the range, below 0 on a deficit or a low box, 1 at lockout. */
  startS: number;
  rangeM: number;
}

/** The log keeps nothing below this; a start so near to lockout is a slip (assumption). */
const lowestS = -0.2;
const highestS = 0.9;

/** Null where the set does not tell enough yet: nobody is named, or its start lacks the height. */
export function startOnRange(
  club: HeightRecords & { rack: readonly RecordOf<'rack'>[] },
  set: Pick<SetDraft, 'lifterId' | 'lift' | 'doneOn'> & { setup: Pick<Setup, 'rackId' | 'start'> },
): StartOnRange | null {
  const { lifterId, lift, doneOn } = set;
  const { start, rackId } = set.setup;
  if (lifterId === null || !club.lifter.some(({ id }) => id === lifterId)) return null;
  if (hasHeight(start.way) && start.heightM === null) return null;
  const benchPadM = club.rack.find(({ id }) => id === rackId)?.benchHeightM ?? null;
  const { bottomM, range } = assembleHeights(club, lifterId, lift, start, doneOn, benchPadM);
  const rangeM = range.toM - range.fromM;
  const startS = (bottomM - range.fromM) / rangeM;
  return { startS: Math.min(highestS, Math.max(lowestS, startS)), rangeM };
}
