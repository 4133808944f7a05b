import type { EvidenceReport, Variant } from '#contract/evidence/evidenceReport.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { grouped } from '#core/evidence/grouped.ts';
import { liftNoise } from '#core/evidence/liftNoise.ts';
import type { LoadRecords } from '#reckon/lifter/assembleLoad.ts';
import { shareRows } from './blockRows.ts';
import { carryOver, equipped, variantAnswer } from './gainAnswers.ts';
import { gymGains, WINDOW_DAYS } from './gymGains.ts';
import { hardLifts } from './hardLifts.ts';
import { meanPull } from './meanPull.ts';
import { meetLifts, meetSteps } from './meetLifts.ts';
import { bandShare, boxHeight } from './trainingAnswers.ts';
import { changedEquipment, gearRemeasured, survivorsOnly, type TrapRecords } from './trapsOf.ts';
import { variantOf } from './variantOf.ts';

type EvidenceRecords = LoadRecords & TrapRecords & Pick<ClubRecords, 'best'>;

/** Every question answered from the club's whole log and its bests. */
export function clubEvidence(records: EvidenceRecords, sets: readonly LoggedSet[]): EvidenceReport {
  const pull = meanPull(records);
  const lifts = hardLifts(sets, records.best, pull);
  const meets = meetLifts(sets, records.best);
  const steps = meetSteps(meets);
  const noise = liftNoise(lifts);
  const gains = gymGains(steps.same, lifts);
  const variants = [...grouped(lifts, (one) => JSON.stringify(variantOf(one, pull)))].map(([key, own]) => ({
    variant: JSON.parse(key) as Variant,
    gains: gymGains(steps.same, own),
  }));
  const aboutMeets = [survivorsOnly(records, lifts, meets), changedEquipment(steps.changed)];
  const aboutGains = [...aboutMeets, gearRemeasured(records, gains)];
  const days = [...lifts, ...meets].map(({ doneOn }) => doneOn).sort();
  return {
    from: days[0] ?? null,
    to: days.at(-1) ?? null,
    sets: sets.filter(({ struckAt }) => struckAt === null).length,
    meetLifts: meets.length,
    windowDays: WINDOW_DAYS,
    answers: [
      carryOver(gains, noise, aboutGains),
      boxHeight(lifts),
      variantAnswer(variants, noise, aboutGains),
      bandShare(shareRows(steps.same, sets, pull), aboutMeets),
      equipped(gains, noise, aboutGains),
    ],
  };
}
