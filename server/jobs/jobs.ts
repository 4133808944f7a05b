import type { ComparisonWish } from '#contract/comparison/comparisonWish.ts';
import type { DayPlan } from '#contract/day/dayPlan.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Comparison } from '#contract/records/comparison.ts';
import type { Day } from '#contract/records/day.ts';
import type { Equipment } from '#contract/records/lift.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import type { AnewAsked } from '#reckon/strength/believeAnew.ts';
import type { LiftOnDay } from '#reckon/strength/estimateLift.ts';
import type { NewestAsked } from '#reckon/strength/takeNewest.ts';
import type { WholeAsked } from '#reckon/strength/weighAndRemember.ts';
import type { MeetsAsked } from '#server/backtest/foretellMeets.ts';
import type { RememberedState, Version } from '#server/strength/rememberedStates.ts';
import type { CopyFile } from '#store/copies/keptCopies.ts';
import type { SetFilter } from '#store/logQuery.ts';
import type { ClubDoor } from './clubDoor.ts';
import type { ImportAsked } from './importLog.ts';
import type { RecordsAsked } from './importRecords.ts';
import { jobTable, type NameIn, type RunIn, type Workplace } from './job.ts';

const aMinuteMs = 60 * 1000;
/** An evening of training with all its pauses. */
const anEveningMs = 180 * aMinuteMs;

/** What is asked of a lifter's log, which is read where the job runs: thousands of sets would keep the thread that answers from answering. */
interface OfLog {
  door: ClubDoor;
  /** All that the answer can rest on but the log and gear that is gone. */
  records: ClubRecords;
}

/** A copy of a club that is kept beside it, and the door to the club itself. */
interface OfCopy {
  door: ClubDoor;
  copy: CopyFile;
}

/** The club with the gear that its log names, and the log at once, for what goes through it again and again. */
async function wholeClub(door: ClubDoor, throughDoor: Workplace['throughDoor']) {
  const { clubWithFormerGear } = await import('./clubWithFormerGear.ts');
  return throughDoor(door, (store) => clubWithFormerGear(store));
}

interface DayAsked {
  records: ClubRecords;
  day: Day;
  estimates: readonly StrengthEstimate[];
}

async function solve(
  { records, day, estimates }: DayAsked,
  how: Pick<Workplace, 'tell'> & { awaited?: string[]; chosenAlone?: boolean },
) {
  const { solveDay } = await import('#reckon/day/solveDay.ts');
  return solveDay(records, day, estimates, { ...how, clock: Date.now });
}

/** All that takes long, each by its name. A thread reads the code of a job when it is first asked for it. */
export const work = jobTable({
  module: new URL('./jobs.ts', import.meta.url).href,
  lanes: {
    days: { threads: 1, keepWarmMs: anEveningMs },
    /** One thread for each core of a common small computer; more would only slow down the screens. */
    lifts: { threads: 2, keepWarmMs: 10 * aMinuteMs },
    /** Holds what estimates are gone on from: a set that was just logged waits for no whole log. */
    newest: { threads: 1, keepWarmMs: anEveningMs },
    /** Apart from the lifts: what a screen waits for does not queue behind hundreds of past meets. */
    pastMeets: { threads: 1, keepWarmMs: 10 * aMinuteMs },
    evidence: { threads: 1, keepWarmMs: aMinuteMs },
    seasons: { threads: 1, keepWarmMs: aMinuteMs },
    /** A comparison that is being planned is simulated anew with each change of its weeks or lifters. */
    comparisons: { threads: 1, keepWarmMs: 10 * aMinuteMs },
    files: { threads: 1, keepWarmMs: aMinuteMs },
    /** What comes into the club from a file, which is looked at, mended and sent again. */
    takenIn: { threads: 1, keepWarmMs: aMinuteMs, isWaitedFor: true },
    /** Once after a start: nobody waits for it, and it stands in nobody's way. */
    wholeFile: { threads: 1, keepWarmMs: 0 },
    /** Now and then as long as anybody writes. */
    writtenLog: { threads: 1, keepWarmMs: aMinuteMs },
  },
  jobs: {
    /** The loads of a day; `awaited`: whose estimate was not there in time. */
    solveDay: {
      lane: 'days',
      run: ({ awaited, ...asked }: DayAsked & { awaited: string[] }, { tell }) =>
        solve(asked, { awaited, tell }),
    },
    /** The same of a day that nobody stands before yet, without other proposals, which are for the Day screen. */
    solveDayAhead: {
      lane: 'seasons',
      run: (asked: DayAsked, { tell }) => solve(asked, { tell, chosenAlone: true }),
    },
    /** A plan of before the log was worked out, told anew by it as another plan; null where there is nothing to add. */
    planByLog: {
      lane: 'days',
      run: async (asked: {
        records: ClubRecords;
        day: Day;
        plan: DayPlan;
        number: number;
        estimates: readonly StrengthEstimate[];
      }) => {
        const { planByLog } = await import('#reckon/day/planByLog.ts');
        return planByLog(asked.records, asked.day, asked.plan, asked.number, asked.estimates);
      },
    },
    /** A lift by its whole log. */
    estimateLift: {
      lane: 'lifts',
      run: async (
        { door, records, of, prior }: OfLog & Pick<WholeAsked, 'of' | 'prior'>,
        { throughDoor }: Workplace,
      ) => {
        const { estimateLift } = await import('#reckon/strength/estimateLift.ts');
        const { withLog } = await import('./withLog.ts');
        const known = await throughDoor(door, (store) => withLog(store, records, liftUpTo(of)));
        return estimateLift(known.records, known.log, of, prior);
      },
    },
    /** The same with what it takes to go on from it, written as bytes. */
    weighLift: {
      lane: 'lifts',
      run: async (
        { door, records, ...asked }: OfLog & Omit<WholeAsked, 'records' | 'log'>,
        { throughDoor }: Workplace,
      ) => {
        const { weighAndRemember } = await import('#reckon/strength/weighAndRemember.ts');
        const { packed } = await import('#server/strength/rememberedStates.ts');
        const { withLog } = await import('./withLog.ts');
        const known = await throughDoor(door, (store) => withLog(store, records, liftUpTo(asked.of)));
        const weighed = weighAndRemember({ ...asked, ...known });
        return weighed && { estimate: weighed.estimate, state: packed(weighed.remembered) };
      },
    },
    followCapacity: {
      lane: 'lifts',
      run: async (
        { door, records, estimate }: OfLog & { estimate: StrengthEstimate },
        { throughDoor }: Workplace,
      ) => {
        const { liftCapacity } = await import('#reckon/strength/liftCapacity.ts');
        const { withLog } = await import('./withLog.ts');
        const { lifterId } = estimate;
        const known = await throughDoor(door, (store) => withLog(store, records, { lifterId }));
        return liftCapacity(known.records, known.log, estimate);
      },
    },
    rememberLift: {
      lane: 'newest',
      run: async (asked: RememberedState) => {
        const { remember } = await import('#server/strength/rememberedStates.ts');
        return remember(asked);
      },
    },
    /** The newest sets alone; null where that takes the whole log or nothing is remembered. */
    takeIn: {
      lane: 'newest',
      run: async (asked: Version & { asked: NewestAsked }) => {
        const { takeIn } = await import('#server/strength/rememberedStates.ts');
        return takeIn(asked);
      },
    },
    /** What is remembered for another day or under another prior; null where that takes the whole log. */
    believeAnew: {
      lane: 'newest',
      run: async (asked: Version & { asked: AnewAsked; withState: boolean }) => {
        const { believeAnew } = await import('#server/strength/rememberedStates.ts');
        return believeAnew(asked);
      },
    },
    weighEvidence: {
      lane: 'evidence',
      run: async (
        { door, label }: { door: ClubDoor; label: string | null },
        { tell, throughDoor }: Workplace,
      ) => {
        const { clubEvidence } = await import('#reckon/evidence/clubEvidence.ts');
        const { ofLabel } = await import('#reckon/evidence/ofLabel.ts');
        const { overClub } = await import('./overClub.ts');
        return throughDoor(door, (store) =>
          overClub(store, ({ records, log, count }) =>
            clubEvidence(label === null ? records : ofLabel(records, label), { sets: log, count }, tell),
          ),
        );
      },
    },
    /** Racks, bands and the hour against all that is planned. */
    checkGearAhead: {
      lane: 'seasons',
      run: async ({ door, today }: { door: ClubDoor; today: string }, { throughDoor }: Workplace) => {
        const { gearAhead } = await import('#reckon/season/gearAhead.ts');
        const { records } = await throughDoor(door, (store) => store.records());
        return gearAhead(records, today);
      },
    },
    /** Pairs, draw and simulation of a comparison that is wished for. */
    planComparison: {
      lane: 'comparisons',
      run: async (
        asked: {
          door: ClubDoor;
          wish: ComparisonWish;
          estimates: readonly StrengthEstimate[];
          seed: number;
          plays: number;
        },
        { throughDoor, tell }: Workplace,
      ) => {
        const { plannedComparison } = await import('#reckon/comparison/plannedComparison.ts');
        const { door, estimates, wish, seed, plays } = asked;
        const { overClub } = await import('./overClub.ts');
        return throughDoor(door, (store) =>
          overClub(store, ({ records, log }) =>
            plannedComparison(records, log, estimates, wish, seed, plays, tell),
          ),
        );
      },
    },
    /** What a drawn comparison shows by now. */
    tellComparison: {
      lane: 'comparisons',
      run: async (
        asked: {
          door: ClubDoor;
          comparison: Comparison;
          estimates: readonly StrengthEstimate[];
          today: string;
        },
        { throughDoor }: Workplace,
      ) => {
        const { toldComparison } = await import('#reckon/comparison/toldComparison.ts');
        const { door, estimates, comparison, today } = asked;
        const { overClub } = await import('./overClub.ts');
        return throughDoor(door, (store) =>
          overClub(store, ({ records, log }) => toldComparison(records, log, estimates, comparison, today)),
        );
      },
    },
    /** Between what a lifter's maxima lie in the weeks ahead. */
    foretellMaxima: {
      lane: 'seasons',
      run: async (asked: {
        records: ClubRecords;
        estimates: readonly StrengthEstimate[];
        equipment: Equipment;
        until: string;
      }) => {
        const { maximaAhead } = await import('#reckon/season/maximaAhead.ts');
        return maximaAhead(asked.records, asked.estimates, asked.equipment, asked.until);
      },
    },
    countBandReps: {
      lane: 'files',
      run: async ({ door }: { door: ClubDoor }, { throughDoor }: Workplace) =>
        throughDoor(door, (store) => store.bandReps()),
    },
    foretellMeets: {
      lane: 'pastMeets',
      run: async (asked: MeetsAsked, { tell }: Workplace) => {
        const { foretellMeets } = await import('#server/backtest/foretellMeets.ts');
        return foretellMeets(asked, tell);
      },
    },
    /** All past meets, and how well they were foretold. */
    backtest: {
      lane: 'pastMeets',
      run: async ({ door }: { door: ClubDoor }, { tell, throughDoor }: Workplace) => {
        const { foretellMeets } = await import('#server/backtest/foretellMeets.ts');
        const { runBacktest } = await import('#server/backtest/runBacktest.ts');
        const club = await wholeClub(door, throughDoor);
        return runBacktest(club, async (asked, toTell) => foretellMeets(asked, toTell), 1, tell);
      },
    },
    /** Through a door of its own to the club's file: the whole file of sets is one transaction there. */
    importLog: {
      lane: 'takenIn',
      run: async ({ door, asked }: { door: ClubDoor; asked: ImportAsked }, { throughDoor }: Workplace) => {
        const { importLog } = await import('./importLog.ts');
        return throughDoor(door, (store) => importLog(store, asked));
      },
    },
    /** A file of records of one kind likewise. */
    importRecords: {
      lane: 'takenIn',
      run: async ({ door, asked }: { door: ClubDoor; asked: RecordsAsked }, { throughDoor }: Workplace) => {
        const { importRecords } = await import('./importRecords.ts');
        return throughDoor(door, (store) => importRecords(store, asked));
      },
    },
    /** The whole club as an archive, into a new file. */
    writeArchive: {
      lane: 'files',
      run: async ({ door, path }: { door: ClubDoor; path: string }, { throughDoor }: Workplace) => {
        const { archivePieces } = await import('#contract/archive/writeArchive.ts');
        const { writeKept } = await import('#store/writeKept.ts');
        await throughDoor(door, (store) =>
          store.snapshot((content) => writeKept(path, archivePieces(content))),
        );
      },
    },
    /** The log, or a part of it, as a spreadsheet, into a new file. */
    writeLog: {
      lane: 'files',
      run: async (
        { door, filter, path }: { door: ClubDoor; filter: SetFilter; path: string },
        { throughDoor }: Workplace,
      ) => {
        const { logPieces } = await import('#contract/log/writeLog.ts');
        const { writeKept } = await import('#store/writeKept.ts');
        await throughDoor(door, (store) =>
          store.snapshot(
            ({ sets, records, former }) => writeKept(path, logPieces(sets, records, former)),
            filter,
          ),
        );
      },
    },
    /** What the archive in a file would do to the club; changes nothing. */
    tryArchive: {
      lane: 'files',
      run: async ({ door, path }: { door: ClubDoor; path: string }, { throughDoor }: Workplace) => {
        const { tryArchive } = await import('./takeArchive.ts');
        const { filePieces } = await import('#store/filePieces.ts');
        return throughDoor(door, (store) => tryArchive(store, filePieces(path)));
      },
    },
    /** Puts an archive in the place of the club, as one transaction likewise. */
    restoreArchive: {
      lane: 'takenIn',
      run: async ({ door, path }: { door: ClubDoor; path: string }, { throughDoor }: Workplace) => {
        const { restoreArchive } = await import('#store/archive.ts');
        const { filePieces } = await import('#store/filePieces.ts');
        return throughDoor(door, (store) => restoreArchive(store, filePieces(path)));
      },
    },
    /** Why a club's file is damaged where only a look at all of it tells; null: it is sound. */
    checkWhole: {
      lane: 'wholeFile',
      run: async ({ path }: { path: string }) => {
        const { checkWhole } = await import('#store/open/lookAtFile.ts');
        return checkWhole(path);
      },
    },
    emptyLog: {
      lane: 'writtenLog',
      run: async ({ path, mark }: { path: string; mark: string | null }) => {
        const { emptyLog } = await import('#store/open/emptyLog.ts');
        emptyLog(path, mark);
      },
    },
    takeSnapshot: {
      lane: 'files',
      run: async ({ path, folder }: { path: string; folder: string }) => {
        const { takeSnapshot } = await import('#store/copies/takeSnapshot.ts');
        return takeSnapshot(path, folder);
      },
    },
    /** A copy of the club as an archive, into a new file. */
    writeCopy: {
      lane: 'files',
      run: async ({ door, copy, path }: OfCopy & { path: string }) => {
        const { readCopy } = await import('#store/copies/readCopy.ts');
        const { writeKept } = await import('#store/writeKept.ts');
        return readCopy(copy, door.clubId, door.who, (archive) => writeKept(path, archive));
      },
    },
    lookIntoCopy: {
      lane: 'files',
      run: async ({ door, copy }: OfCopy, { throughDoor }: Workplace) => {
        const { lookIntoCopy } = await import('#server/copies/restoreCopy.ts');
        return throughDoor(door, (store) => lookIntoCopy(store, copy));
      },
    },
    restoreCopy: {
      lane: 'takenIn',
      run: async ({ door, copy }: OfCopy, { throughDoor }: Workplace) => {
        const { restoreCopy } = await import('#server/copies/restoreCopy.ts');
        return throughDoor(door, (store) => restoreCopy(store, copy));
      },
    },
  },
});

function liftUpTo({ lifterId, lift, on }: LiftOnDay): SetFilter {
  return { lifterId, lift, to: on };
}

export type Work = typeof work;
export type JobName = NameIn<Work>;
export type RunWork = RunIn<Work>;
