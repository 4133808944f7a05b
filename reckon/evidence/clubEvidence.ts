import type { EvidenceAnswer, EvidenceReport, Question, Variant } from '#contract/evidence/evidenceReport.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { Tell } from '#contract/words/doing.ts';
import { liftNoise } from '#core/evidence/liftNoise.ts';
import { grouped } from '#core/numeric/grouped.ts';
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

/** In the order in which they are answered. */
const questions: readonly Question[] = ['carryOver', 'boxHeight', 'variants', 'bandShare', 'equipped'];

type EvidenceRecords = LoadRecords & TrapRecords & Pick<ClubRecords, 'best'>;

/** Of all the time, what it takes to find the hard lifts in the log, and for each question; in the demo, about. */
const readingLog = 10;
const takes: Record<Question, number> = {
  carryOver: 4,
  boxHeight: 1,
  variants: 1,
  bandShare: 1,
  equipped: 1,
};

/** Every question answered from the club's whole log and its bests; `tell` hears how far it is. */
export function clubEvidence(
  records: EvidenceRecords,
  sets: readonly LoggedSet[],
  tell: Tell = () => {},
): EvidenceReport {
  const total = readingLog + questions.reduce((sum, question) => sum + takes[question], 0);
  const pull = meanPull(records);
  const lifts = hardLifts(sets, records.best, pull, (at, of) =>
    tell((readingLog * at) / of, total, { code: 'readingLog', at, of }),
  );
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
  const answer: Record<Question, () => EvidenceAnswer> = {
    carryOver: () => carryOver(gains, noise, aboutGains),
    boxHeight: () => boxHeight(lifts),
    variants: () => variantAnswer(variants, noise, aboutGains),
    bandShare: () => bandShare(shareRows(steps.same, sets, pull), aboutMeets),
    equipped: () => equipped(gains, noise, aboutGains),
  };
  return {
    from: days[0] ?? null,
    to: days.at(-1) ?? null,
    sets: sets.filter(({ struckAt }) => struckAt === null).length,
    meetLifts: meets.length,
    windowDays: WINDOW_DAYS,
    answers: questions.map((question, asked) => {
      const before = questions.slice(0, asked).reduce((sum, one) => sum + takes[one], readingLog);
      tell(before, total, { code: 'question', at: asked + 1, of: questions.length, question });
      return answer[question]();
    }),
  };
}
