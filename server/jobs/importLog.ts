import { MOST_TOLD } from '#contract/csv/CsvProblem.ts';
import { againstLog, type NewSet } from '#contract/log/againstLog.ts';
import type { LogFileAnswer } from '#contract/log/logFileAnswer.ts';
import { meantBars, withMeantBar } from '#contract/log/meantBar.ts';
import { readLog } from '#contract/log/readLog.ts';
import type { SlipAsked, SlipTaking } from '#contract/log/slipAsked.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { GivenSet, LoggedSet } from '#contract/records/loggedSet.ts';
import { grouped } from '#core/numeric/grouped.ts';
import { type SlipInFile, slipsInFile } from '#reckon/log/slipsInFile.ts';
import type { ClubStore } from '#store/ClubStore.ts';
import { Refusal } from '#store/Refusal.ts';
import { clubWithFormerGear } from './clubWithFormerGear.ts';

/** A file of sets: the header of the file for each column, or null where they look like ours. */
export interface ImportAsked {
  text: string;
  columns: Record<string, string> | null;
  /** What to do with sets that look slipped, by the slip's key; those of a slip that is not named are taken as written. */
  slips: Record<string, SlipTaking>;
  /** Only look; change nothing. */
  dryRun: boolean;
}

/** Takes a file in, whole or, where anything in it is wrong, not at all. A set that the log has is passed over. */
export async function importLog(
  store: ClubStore,
  { text, columns, slips: takings, dryRun }: ImportAsked,
): Promise<LogFileAnswer> {
  const { records, seq } = await store.records();
  const { sets, problems, ...file } = readLog(text, columns, records, await store.today());
  const dates = sets.map(({ doneOn }) => doneOn).toSorted();
  const { fresh, slips } = await newIn(store, sets);
  if (problems.length === 0) refuseOthers(takings, slips);
  const taken = asTaken(fresh, slips, takings);
  const ids = new Set(sets.map(({ lifterId }) => lifterId));
  const takes = !dryRun && problems.length === 0 && taken.length > 0;
  return {
    ...file,
    problems: problems.slice(0, MOST_TOLD),
    problemCount: problems.length,
    added: taken.length,
    alreadyThere: sets.length - fresh.length,
    slips: slips.map((slip) => slipAsked(slip, sets, records)),
    firstOn: dates[0] ?? null,
    lastOn: dates.at(-1) ?? null,
    lifters: records.lifter.filter(({ id }) => ids.has(id)).map(({ name }) => name),
    dryRun,
    seq: takes ? (await store.takeSetsIn(taken)).seq : seq,
  };
}

/** What the log does not have, and which of it looks slipped. One lifter after the other: of a long log one lifter's is held at a time. */
async function newIn(
  store: ClubStore,
  sets: readonly GivenSet[],
): Promise<{ fresh: NewSet[]; slips: SlipInFile[] }> {
  const today = await store.today();
  const placesOf = grouped([...sets.keys()], (at) => sets[at]!.lifterId);
  const all: { fresh: NewSet[]; slips: SlipInFile[] } = { fresh: [], slips: [] };
  for (const [lifterId, places] of placesOf) {
    const { records, log } = await clubWithFormerGear(store, { lifterId });
    const own = newOfLifter(
      places.map((at) => sets[at]!),
      log,
      records,
      today,
    );
    for (const { set, at } of own.fresh) all.fresh.push({ set, at: places[at]! });
    for (const slip of own.slips) all.slips.push({ ...slip, at: slip.at.map((at) => places[at]!) });
  }
  return { ...all, fresh: all.fresh.toSorted((a, b) => a.at - b.at) };
}

/** The same of one lifter, whose log this is. What was taken in earlier as it was meant is there already. */
function newOfLifter(
  sets: readonly GivenSet[],
  log: readonly LoggedSet[],
  records: ClubRecords,
  today: string,
): { fresh: NewSet[]; slips: SlipInFile[] } {
  const asWritten = againstLog(sets, log);
  const found = slipsInFile(asWritten, log, records, today);
  const meant = [...sets];
  for (const { looksLike, at } of found) for (const i of at) meant[i] = withMeantBar(sets[i]!, looksLike);
  const fresh = againstLog(meant, log);
  const isNew = new Set(fresh.map(({ at }) => at));
  const slips = found.map((slip) => ({ ...slip, at: slip.at.filter((i) => isNew.has(i)) }));
  return {
    fresh: fresh.map(({ set, at }) => ({ set: { ...set, setup: sets[at]!.setup }, at })),
    slips: slips.filter(({ at }) => at.length > 0),
  };
}

/** A slip that was seen may be gone since: somebody logged or struck sets meanwhile. */
function refuseOthers(takings: ImportAsked['slips'], slips: readonly SlipInFile[]): void {
  const keys = slips.map(keyOf);
  const other = Object.keys(takings).find((key) => !keys.includes(key));
  if (other === undefined) return;
  const sentence = `slips names "${other}", but nothing of that kind is found in the file as the log is now; look at the file again.`;
  throw new Refusal('invalid', 'slips', sentence);
}

function asTaken(
  fresh: readonly NewSet[],
  slips: readonly SlipInFile[],
  takings: ImportAsked['slips'],
): NewSet['set'][] {
  const slipAt = new Map(slips.flatMap((slip) => slip.at.map((at) => [at, slip])));
  return fresh.flatMap(({ set, at }) => {
    const slip = slipAt.get(at);
    const taking = slip && takings[keyOf(slip)];
    if (taking === 'leftOut') return [];
    if (taking === 'checked') return [{ ...set, barChecked: true }];
    return slip && taking === 'asMeant' ? [withMeantBar(set, slip.looksLike)] : [set];
  });
}

function keyOf({ lifterId, lift, looksLike }: SlipInFile): string {
  return `${lifterId} ${lift} ${looksLike}`;
}

function slipAsked(slip: SlipInFile, sets: readonly GivenSet[], records: ClubRecords): SlipAsked {
  const { lifterId, lift, looksLike } = slip;
  const slipped = slip.at.map((i) => sets[i]!);
  const dates = slipped.map(({ doneOn }) => doneOn).toSorted();
  return {
    key: keyOf(slip),
    lifter: records.lifter.find(({ id }) => id === lifterId)?.name ?? lifterId,
    lift,
    looksLike,
    setCount: slipped.length,
    firstOn: dates[0]!,
    lastOn: dates.at(-1)!,
    bars: meantBars(slipped, looksLike),
  };
}
