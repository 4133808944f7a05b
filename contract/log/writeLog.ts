import { stringify } from 'csv-stringify/sync';
import type { FormerRecord } from '#contract/archive/formerRecord.ts';
import { guardFormula } from '#contract/csv/formulaGuard.ts';
import { type ClubRecords, type KindName, kindNames, type RecordOf } from '#contract/records/allKinds.ts';
import { calledBy } from '#contract/records/labels.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import { inLots, type Long } from '#contract/records/long.ts';
import { joinEscaped } from './escapedList.ts';
import { type LogColumn, logColumnNames, logColumns } from './logColumns.ts';
import { finder } from './readHung.ts';

/** The sets that count, one a line, units in the header; lifters and gear by name, or by id where a name is not clear. */
export function writeLog(
  sets: readonly LoggedSet[],
  club: ClubRecords,
  former: readonly FormerRecord[],
): string {
  return header() + lines(sets, gearNames(club, former));
}

/** The same in pieces, one after the other: a million sets are more than should be held at once. */
export async function* logPieces(
  sets: Long<LoggedSet>,
  club: ClubRecords,
  former: readonly FormerRecord[],
): AsyncGenerator<string, void> {
  const gear = gearNames(club, former);
  yield header();
  for await (const lot of inLots(sets, linesInPiece)) yield lines(lot, gear);
}

const linesInPiece = 1000;
const columns = logColumnNames.filter((column) => logColumns[column].header !== null);

function header(): string {
  return stringify([columns.map((column) => logColumns[column].header)]);
}

function lines(sets: readonly LoggedSet[], gear: Gear): string {
  const cells = sets.filter(({ struckAt }) => struckAt === null).map((set) => cellsOf(set, gear));
  return stringify(
    cells.map((of) => columns.map((column) => of[column])),
    { quoted_match: /\r/ },
  );
}

type NameOf = (kind: KindName, id: string) => string;

function cellsOf(set: LoggedSet, { nameOf, bandOf }: Gear): Record<LogColumn, string | number | null> {
  const { setup } = set;
  const bands = setup.bands.map(bandOf).join('; ');
  const chains = setup.chains.map(
    ({ chainPairId, pairs }) => `${pairs} x ${nameOf('chainPair', chainPairId)}`,
  );
  return {
    date: set.doneOn,
    lifter: guardFormula(nameOf('lifter', set.lifterId)),
    lift: set.lift,
    order: set.order,
    sets: null,
    start: setup.start.way,
    startHeight: setup.start.heightM,
    equipment: set.equipment,
    bar: setup.barKg,
    barChecked: set.barChecked ? 'yes' : 'no',
    rack: setup.rackId === null ? null : guardFormula(nameOf('rack', setup.rackId)),
    bands: guardFormula(bands),
    chains: guardFormula(joinEscaped(chains, ';')),
    reps: set.reps,
    made: set.made,
    stoppedAt: set.stoppedAtS,
    meanSpeeds: set.meanSpeedsMps.join(';'),
    peakSpeeds: set.peakSpeedsMps.join(';'),
    repsInReserve: set.repsInReserve,
    effort: null,
    rest: set.restS,
    bodyMass: set.bodyMassKg,
    platform: set.platform ? 'yes' : 'no',
    place: guardFormula(set.place),
    note: guardFormula(set.note),
  };
}

interface Gear {
  nameOf: NameOf;
  bandOf: (band: LoggedSet['setup']['bands'][number]) => string;
}

function gearNames(club: ClubRecords, former: readonly FormerRecord[]): Gear {
  const find = finder(club);
  const live = new Map<string, RecordOf<KindName>>();
  for (const kind of kindNames) for (const record of club[kind]) live.set(`${kind} ${record.id}`, record);
  const gone = new Map<string, RecordOf<KindName>>(
    former.map(({ kind, record }) => [`${kind} ${record.id}`, record]),
  );
  const recordOf = (kind: KindName, id: string) => live.get(`${kind} ${id}`) ?? gone.get(`${kind} ${id}`);
  const nameOf = once((kind: KindName, id: string) => {
    const record = recordOf(kind, id);
    const name = record && calledBy(record);
    if (!name) return id;
    const found = find(kind, name, 'rackId' in record ? record.rackId : null);
    // A reader finds it by its name, or it is gone and nothing else is called so.
    const clear = live.has(`${kind} ${id}`) ? 'value' in found && found.value === id : 'wrong' in found;
    return clear ? name : id;
  });
  return {
    nameOf,
    bandOf({ bandPairId, hookupId }) {
      const hookup = recordOf('hookup', hookupId);
      const rack = hookup && 'rackId' in hookup ? [nameOf('rack', hookup.rackId)] : [];
      return joinEscaped([nameOf('bandPair', bandPairId), nameOf('hookup', hookupId), ...rack], '@');
    },
  };
}

/** A long log names the same few again and again. */
function once(find: NameOf): NameOf {
  const found = new Map<string, string>();
  return (kind, id) => {
    const key = `${kind} ${id}`;
    const name = found.get(key) ?? find(kind, id);
    found.set(key, name);
    return name;
  };
}
