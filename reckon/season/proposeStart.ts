import { dayNumber } from '#contract/calendar/dayNumber.ts';
import { mondayOf } from '#contract/calendar/isoWeek.ts';
import { isSameStart } from '#contract/day/isSameStart.ts';
import type { EvidenceLine } from '#contract/evidence/evidenceReport.ts';
import type { Start } from '#contract/records/lift.ts';
import type { Best } from '#contract/records/lifters.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { GroupAsked } from '#contract/records/method.ts';
import type { OwnBox } from '#contract/season/seasonPlan.ts';
import type { StartKnown, StartProposal, StartReason } from '#contract/season/startProposal.ts';
import { hardLifts } from '#reckon/evidence/hardLifts.ts';
import { meanPull } from '#reckon/evidence/meanPull.ts';
import { assembledOrNull } from '#reckon/gear/assembledOrNull.ts';
import { assembleHeights } from '#reckon/lifter/assembleHeights.ts';
import type { LoadRecords } from '#reckon/lifter/assembleLoad.ts';
import { startFor } from './groupsFor.ts';

/** For which group of one lifter, on which day, a start is sought. */
export interface StartSought {
  lifterId: string;
  date: string;
  group: Pick<GroupAsked, 'lift' | 'work' | 'variants' | 'restWeeks'>;
  hasBands: boolean;
  /** Where the group asks for each lifter's own box. */
  ownBoxes: readonly OwnBox[];
  /** On which other days the plan has this group, and from which start. */
  planned: readonly { date: string; start: Start }[];
}

/** What tells of a lifter beside the plan: the own log and bests, and the club's answers of what the gains of a start were worth. */
export interface StartTold {
  sets: readonly LoggedSet[];
  bests: readonly Best[];
  evidence: readonly EvidenceLine[];
}

/** Heights are read to this (m): a box is the same box. */
const SAME_START_M = 0.005;
/** Misses longer ago tell of another lifter; a single one may be chance. Judgement. */
const MISSES_DAYS = 56;
const LEAST_MISSES = 2;
/** As a share of the range a start may lie above a miss and still begin below it: bars stop a little differently. Judgement. */
const ABOUT_S = 0.05;

/**
 * Which start of a group one lifter might do on a day. Three things speak, each for one start of those that have rested: what was done longest ago; what was
 * surely worth most on the platform; and, where misses of the last weeks tell, the start that begins nearest below where they stopped (common practice, no
 * source). The start that most of them speak for is proposed, of several the one done longest ago. It is a proposal: the plan has what it has.
 */
export function proposeStart(
  records: LoadRecords,
  asked: StartSought,
  { sets, bests, evidence }: StartTold,
): StartProposal {
  const { lifterId, date, group } = asked;
  const own = sets.filter((set) => set.lift === group.lift && set.struckAt === null && set.doneOn < date);
  const done = doneOf(records, group, own, bests);
  const starts = group.variants.map((variant): StartKnown => {
    const start = startFor(variant.start, asked.ownBoxes);
    const isThis = (one: { start: Start }) => isSameStart(one.start, start, SAME_START_M);
    const days = done.filter(isThis).map((one) => one.date);
    const used = [...asked.planned.filter(isThis).map((one) => one.date), ...days];
    return {
      variant,
      start,
      lastDoneOn: days.toSorted().at(-1) ?? null,
      hasRested: used.every((day) => Math.abs(weeksBetween(day, date)) > group.restWeeks),
      carriedOver: carriedOver(evidence, asked, start),
    };
  });
  const rested = starts.filter(({ hasRested }) => hasRested).toSorted(byLongestAgo(asked));
  const votes = [
    dueOf(rested),
    worthMost(rested),
    belowMisses(records, lifterId, group.lift, date, rested, own),
  ].filter((vote) => vote !== null);
  const reasonsFor = (one: StartKnown) => votes.flatMap((vote) => (vote.for === one ? [vote.reason] : []));
  const [best] = rested.toSorted((a, b) => reasonsFor(b).length - reasonsFor(a).length);
  return {
    starts,
    proposed: best ? { variant: best.variant, start: best.start, reasons: reasonsFor(best) } : null,
  };
}

/** Days and starts of such work: heavy singles of the heavy lifts and misses alone, other work of every set. */
function doneOf(
  records: LoadRecords,
  { work, lift }: StartSought['group'],
  own: readonly LoggedSet[],
  bests: readonly Best[],
): { date: string; start: Start }[] {
  if (work !== 'maximal') return own.map(dated);
  const written = bests.filter((best) => best.lift === lift);
  const missed = own.filter(({ made, reps }) => made < reps);
  return [...hardLifts(own, written, meanPull(records)), ...missed].map(dated);
}

function dated({ doneOn, setup }: Pick<LoggedSet, 'doneOn' | 'setup'>): { date: string; start: Start } {
  return { date: doneOn, start: setup.start };
}

function weeksBetween(day: string, other: string): number {
  return (dayNumber(mondayOf(other)) - dayNumber(mondayOf(day))) / 7;
}

/** The lifter's own line where there is one that says anything, else the club's. */
function carriedOver(
  evidence: readonly EvidenceLine[],
  { lifterId, group, hasBands }: StartSought,
  start: Start,
): StartKnown['carriedOver'] {
  const hung = hasBands ? 'bands' : 'straight';
  const told = evidence.filter(
    ({ variant, effect }) =>
      effect !== null && variant?.lift === group.lift && variant.way === start.way && variant.hung === hung,
  );
  const own = told.find((line) => line.lifterId === lifterId);
  const club = told.find((line) => line.lifterId === null);
  if (own?.effect) return { ...own.effect, whose: 'lifter' };
  return club?.effect ? { ...club.effect, whose: 'club' } : null;
}

/** By the last day of plan or log before that one; the first of the list among those never done. */
function byLongestAgo({ date, planned }: StartSought) {
  const lastOf = ({ start, lastDoneOn }: StartKnown) =>
    planned
      .filter((one) => one.date < date && isSameStart(one.start, start, SAME_START_M))
      .reduce((last, one) => (one.date > last ? one.date : last), lastDoneOn ?? '');
  return (a: StartKnown, b: StartKnown) => (lastOf(a) < lastOf(b) ? -1 : lastOf(a) > lastOf(b) ? 1 : 0);
}

interface Vote {
  for: StartKnown;
  reason: StartReason;
}

function dueOf([first]: readonly StartKnown[]): Vote | null {
  return first ? { for: first, reason: { code: 'due', lastDoneOn: first.lastDoneOn } } : null;
}

/** Of what surely carried over. Starts of one way have one answer, so that the longest ago of them is meant. */
function worthMost(rested: readonly StartKnown[]): Vote | null {
  return rested.reduce<Vote | null>((most, one) => {
    if (one.carriedOver === null || one.carriedOver.low80 <= 0) return most;
    const { value, low80, high80, whose } = one.carriedOver;
    const worth = most?.reason.code === 'carriedOver' ? most.reason.value : 0;
    return value > worth ? { for: one, reason: { code: 'carriedOver', value, low80, high80, whose } } : most;
  }, null);
}

function belowMisses(
  records: LoadRecords,
  lifterId: string,
  lift: StartSought['group']['lift'],
  date: string,
  rested: readonly StartKnown[],
  own: readonly LoggedSet[],
): Vote | null {
  const stops = own.flatMap(({ doneOn, stoppedAtS }) =>
    stoppedAtS !== null && dayNumber(date) - dayNumber(doneOn) <= MISSES_DAYS ? [stoppedAtS] : [],
  );
  if (stops.length < LEAST_MISSES) return null;
  const atS = stops.reduce((sum, s) => sum + s, 0) / stops.length;
  const begins = rested.flatMap((one) => {
    const s = beginsAtS(records, lifterId, lift, one.start, date);
    return s !== null && s <= atS + ABOUT_S ? [{ one, s }] : [];
  });
  const [first, ...others] = begins;
  if (first === undefined) return null;
  const nearest = others.reduce((best, each) => (each.s > best.s ? each : best), first);
  return { for: nearest.one, reason: { code: 'misses', count: stops.length, atS } };
}

/** Where on the lifter's full range the bar is at the bottom of a start. */
function beginsAtS(
  records: LoadRecords,
  lifterId: string,
  lift: StartSought['group']['lift'],
  start: Start,
  on: string,
): number | null {
  return assembledOrNull(() => {
    const { bottomM, range } = assembleHeights(records, lifterId, lift, start, on);
    return (bottomM - range.fromM) / (range.toM - range.fromM);
  });
}
