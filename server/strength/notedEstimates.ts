import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import type { StrengthSummary } from '#contract/strength/strengthSummary.ts';
import type { ToldOfLift } from '#reckon/strength/clubPriors.ts';
import type { LiftOnDay } from '#reckon/strength/estimateLift.ts';
import type { KeptAnswers } from '#server/jobs/keptAnswers.ts';
import { markOf } from '#server/jobs/markOf.ts';
import type { EstimateMark } from './keptEstimates.ts';
import { liftKey } from './liftKey.ts';
import { rememberedCount } from './rememberedCount.ts';

/** What is noted of the newest estimate of a lift. */
export interface Noted {
  mark: EstimateMark;
  /** Null where nothing came out. */
  found: { short: Omit<StrengthSummary, 'upToDate'>; told: ToldOfLift } | null;
  /** It comes from a run of the server before, which had taken sets in alone and did not come to weigh the whole log. */
  isRecalledInPart: boolean;
}

/** Estimates in short, those of runs of the server before included: a list of everybody needs no more. */
export function notedEstimates(keepIn: KeptAnswers) {
  const kept = keepIn.of('estimates in short', rememberedCount);
  const noted = new Map<string, Noted | undefined>();
  const newest = new Map<string, string>();

  function recalled(key: string): Noted | undefined {
    const known = kept.find(key);
    if (!known) return undefined;
    const { mark, found, isWhole } = known.answer as KeptNoted;
    return { mark, found, isRecalledInPart: !isWhole };
  }

  return {
    /** Whatever day it was made for. */
    of(lift: Omit<LiftOnDay, 'on'>): Noted | undefined {
      const key = liftKey(lift);
      if (!noted.has(key)) noted.set(key, recalled(key));
      return noted.get(key);
    },
    /** `estimate`: null where nothing came out, which is tried again by the next run of the server. */
    note(lift: Omit<LiftOnDay, 'on'>, mark: EstimateMark, estimate: StrengthEstimate | null): void {
      const key = liftKey(lift);
      const found = estimate && inShort(estimate);
      noted.set(key, { mark, found, isRecalledInPart: false });
      const name = estimate ? `${markOf(estimate)} ${Object.values(mark).join(' ')}` : '';
      if (!estimate || newest.get(key) === name) return;
      newest.set(key, name);
      const answer: KeptNoted = { mark, found, isWhole: estimate.takenIn === 0 };
      kept.put(key, { basis: [], answer, mark: null });
    },
  };
}

interface KeptNoted extends Pick<Noted, 'mark' | 'found'> {
  isWhole: boolean;
}

function inShort(estimate: StrengthEstimate): NonNullable<Noted['found']> {
  const { lifterId, lift, on, setCount, lastSetOn, maxKg, bodyMassKg, parameters } = estimate;
  return {
    short: { lifterId, lift, on, setCount, lastSetOn, maxKg },
    told: { lifterId, lift, bodyMassKg, parameters },
  };
}
