import { useEffect, useState } from 'react';
import { z } from 'zod';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import { lift, setup } from '#contract/records/lift.ts';
import { useInAddress } from '#web/parts/useInAddress.ts';
import type { LifterRecords } from '../lifterRecords.ts';
import { firstTrial, type Trial } from './Trial.ts';

/** The trial of the page's lifter, and another one beside it. */
interface Trials {
  trial: Trial;
  other: Trial | null;
}

/** A drag changes the trial at every frame, more often than a browser lets an address be changed. */
const settledMs = 250;

const trialShape = setup.extend({ lifterId: z.string(), lift });
const trialsShape = z.strictObject({ trial: trialShape, other: trialShape.nullable() });

/** What is tried on a lifter; once it has settled it stands in the address, so that it outlives a reload and can be sent on. */
export function useTrials(
  own: LifterRecords,
  club: ClubRecords,
): [Trials, (change: Partial<Trials>) => void] {
  const [asked, setAsked] = useInAddress('try');
  const [trials, setTrials] = useState<Trials>(
    () => trialsIn(asked, own, club) ?? { trial: firstTrial(own, club), other: null },
  );
  const [changed, setChanged] = useState(false);
  const text = JSON.stringify(trials);
  useEffect(() => {
    if (!changed || text === asked) return;
    const settled = setTimeout(() => setAsked(text), settledMs);
    return () => clearTimeout(settled);
  }, [changed, text, asked, setAsked]);
  const change = (next: Partial<Trials>) => {
    setChanged(true);
    setTrials((now) => ({ ...now, ...next }));
  };
  return [trials, change];
}

/** What an address says was tried; null where that is no trial of this lifter, or of nobody in the club. */
function trialsIn(asked: string, own: LifterRecords, club: ClubRecords): Trials | null {
  try {
    const { trial, other } = trialsShape.parse(JSON.parse(asked));
    const isKnown = other === null || club.lifter.some(({ id }) => id === other.lifterId);
    return trial.lifterId === own.lifter.id && isKnown ? { trial, other } : null;
  } catch {
    return null;
  }
}
