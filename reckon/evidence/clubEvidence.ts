import type { EvidenceAnswer, EvidenceReport, Question, Variant } from '#contract/evidence/evidenceReport.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { inRuns, type Long } from '#contract/records/long.ts';
import type { Tell } from '#contract/words/doing.ts';
import { liftNoise } from '#core/evidence/liftNoise.ts';
import { grouped } from '#core/numeric/grouped.ts';
import type { LoadRecords } from '#reckon/lifter/assembleLoad.ts';
import { shareRows } from './blockRows.ts';
import { carryOver, equipped, variantAnswer } from './gainAnswers.ts';
import { gymGains, WINDOW_DAYS } from './gymGains.ts';
import { hardLiftsOf } from './hardLifts.ts';
import { meanPull } from './meanPull.ts';
import { meetLifts, meetSteps } from './meetLifts.ts';
import { bandShare, boxHeight } from './trainingAnswers.ts';
import { changedEquipment, gearRemeasured, survivorsOnly, type TrapRecords } from './trapsOf.ts';
import { variantOf } from './variantOf.ts';

/** In the order in which they are answered. */
const questions: readonly Question[] = ['carryOver', 'boxHeight', 'variants', 'bandShare', 'equipped'];

type EvidenceRecords = LoadRecords & TrapRecords & Pick<ClubRecords, 'best'>;

/** Reading is told so often at most, and no oftener than after so many sets: it is to be seen to move, and too seldom to be felt. */
const MOST_TOLD = 200;
const LEAST_TOLD = 50;

/** Of all the time, what it takes to find the hard lifts in the log, and for each question; in the demo, about. */
const readingLog = 10;
const takes: Record<Question, number> = {
  carryOver: 4,
  boxHeight: 1,
  variants: 1,
  bandShare: 1,
  equipped: 1,
};

/** A log that may be too long to be held at once, in its order, and about how many sets it has. */
export interface ReadLog {
  sets: Long<LoggedSet>;
  count: number;
}

/**
 * Every question answered from the log and the bests of the lifters among the records; `tell` hears how far it is. The log is gone through
 * twice, a day at a time: what its hard lifts and meets are, and then what was trained from meet to meet.
 */
export async function clubEvidence(
  records: EvidenceRecords,
  log: ReadLog,
  tell: Tell = () => {},
): Promise<EvidenceReport> {
  const total = readingLog + questions.reduce((sum, question) => sum + takes[question], 0);
  const pull = meanPull(records);
  const ids = new Set(records.lifter.map(({ id }) => id));
  const readings = 2 * log.count;
  const every = Math.max(LEAST_TOLD, Math.ceil(readings / MOST_TOLD));
  async function* read(before: number): AsyncGenerator<LoggedSet, void> {
    let at = before;
    for await (const set of log.sets) {
      if (at % every === 0)
        tell((readingLog * at) / readings, total, { code: 'readingLog', at, of: readings });
      at += 1;
      if (ids.has(set.lifterId)) yield set;
    }
  }

  const hard = hardLiftsOf(records.best, pull);
  const onPlatform: LoggedSet[] = [];
  let setCount = 0;
  for await (const day of inRuns(read(0), ({ doneOn }) => doneOn)) {
    hard.take(day);
    onPlatform.push(...day.filter(({ platform }) => platform));
    setCount += day.filter(({ struckAt }) => struckAt === null).length;
  }
  const lifts = hard.all();
  const meets = meetLifts(onPlatform, records.best);
  const steps = meetSteps(meets);
  const noise = liftNoise(lifts);
  const gains = gymGains(steps.same, lifts);
  const variants = [...grouped(lifts, (one) => JSON.stringify(variantOf(one, pull)))].map(([key, own]) => ({
    variant: JSON.parse(key) as Variant,
    gains: gymGains(steps.same, own),
  }));
  const shares = await shareRows(steps.same, read(log.count), pull);
  const aboutMeets = [survivorsOnly(records, lifts, meets), changedEquipment(steps.changed)];
  const aboutGains = [...aboutMeets, gearRemeasured(records, gains)];
  const days = [...lifts, ...meets].map(({ doneOn }) => doneOn).sort();
  const answer: Record<Question, () => EvidenceAnswer> = {
    carryOver: () => carryOver(gains, noise, aboutGains),
    boxHeight: () => boxHeight(lifts),
    variants: () => variantAnswer(variants, noise, aboutGains),
    bandShare: () => bandShare(shares, aboutMeets),
    equipped: () => equipped(gains, noise, aboutGains),
  };
  return {
    from: days[0] ?? null,
    to: days.at(-1) ?? null,
    sets: setCount,
    meetLifts: meets.length,
    windowDays: WINDOW_DAYS,
    answers: questions.map((question, asked) => {
      const before = questions.slice(0, asked).reduce((sum, one) => sum + takes[one], readingLog);
      tell(before, total, { code: 'question', at: asked + 1, of: questions.length, question });
      return answer[question]();
    }),
  };
}
