import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Lift, Start } from '#contract/records/lift.ts';
import type { GearMend } from '#contract/season/gearWarning.ts';
import { leastSets } from '#core/season/leastSets.ts';
import { type GearAsked, shareGear } from '#core/season/shareGear.ts';
import { pairsInUse } from '#reckon/day/assembleRackGear.ts';
import type { bandWays } from './bandWays.ts';

/** Lifters who do one lift in one hour, each with bands of some share of the maximum at lockout. */
export interface HourAsked {
  on: string;
  lift: Lift;
  lifters: readonly { lifterId: string; start: Start; bandShare: number }[];
  /** So many get their sets in at one rack. */
  mostARack: number;
  /** How long training would last for one lifter a rack; one more at each takes as long again. */
  turnMinutes: number;
}

export interface HourFound {
  /** Who is left without, with all that could be served; null: nobody. */
  short: {
    lifterIds: string[];
    isMost: boolean;
    lacking: 'turns' | 'bands';
    racks: number;
    mends: GearMend[];
  } | null;
  /** Whom no bands of the club bring there, however few train, and the nearest that they do. */
  outOfReach: { lifterId: string; bandShare: number; nearestShare: number }[];
  /** Whose heights or maximum are not known. */
  notJudged: string[];
}

/** Whether racks and bands do for an hour, who is left without, and what would mend it. */
export function gearOfHour(
  records: ClubRecords,
  { on, lift, lifters, mostARack, turnMinutes }: HourAsked,
  waysOf: ReturnType<typeof bandWays>,
): HourFound {
  const judged = lifters.map((lifter) => {
    const found = waysOf(lifter.lifterId, lift, lifter.start, on);
    return { ...lifter, found, ways: found?.near(lifter.bandShare) ?? null };
  });
  const able = judged.flatMap((one) =>
    one.ways?.some((sets) => sets.length > 0) ? [{ ...one, ways: one.ways }] : [],
  );
  const asked: GearAsked = { ways: able.map(({ ways }) => ways), mostARack };
  const { rackOf, isMost } = shareGear(asked);
  const without = able.filter((_, at) => rackOf[at] === null);
  const lackingAndMends = () => {
    const mends = mendsOf(records, on, asked, rackOf);
    if (doesFor(withoutBands(asked))) return { lacking: 'bands' as const, mends };
    return { lacking: 'turns' as const, mends: [...mends, ...mendsOfTurns(asked, turnMinutes)] };
  };
  return {
    short:
      without.length === 0
        ? null
        : {
            lifterIds: without.map(({ lifterId }) => lifterId),
            isMost,
            racks: able[0]!.ways.length,
            ...lackingAndMends(),
          },
    outOfReach: judged.flatMap(({ lifterId, bandShare, found, ways }) =>
      found === null || ways!.some((sets) => sets.length > 0)
        ? []
        : [{ lifterId, bandShare, nearestShare: found.nearest(bandShare) }],
    ),
    notJudged: judged.flatMap(({ lifterId, found }) => (found === null ? [lifterId] : [])),
  };
}

/** What alone would serve everybody; each is tried. */
function mendsOf(
  records: ClubRecords,
  on: string,
  asked: GearAsked,
  rackOf: readonly (number | null)[],
): GearMend[] {
  const { ways, mostARack } = asked;
  const mends: GearMend[] = [];
  if (doesFor({ ways: ways.filter((_, at) => rackOf[at] === null), mostARack }))
    mends.push({ by: 'anotherHour' });
  const everywhere = ways.map((byRack) => {
    const anywhere = leastSets(byRack.flat());
    return byRack.map(() => anywhere);
  });
  if (doesFor({ ways: everywhere, mostARack })) mends.push({ by: 'hookups' });
  const inUse = pairsInUse(records, on);
  const onePair = inUse.flatMap(({ widthMm }, at) =>
    doesFor({ ways: withOneMore(ways, BigInt(at), BigInt(inUse.length)), mostARack }) ? [widthMm] : [],
  );
  if (onePair.length > 0) mends.push({ by: 'onePairMore', widthMm: Math.min(...onePair) });
  return mends;
}

/** More turns: at one rack more, or as soon as training lasts long enough, up to twice as long. */
function mendsOfTurns({ ways, mostARack }: GearAsked, turnMinutes: number): GearMend[] {
  const mends: GearMend[] = [];
  if (doesFor({ ways: ways.map((byRack) => [...byRack, leastSets(byRack.flat())]), mostARack }))
    mends.push({ by: 'oneRackMore' });
  const more = Array.from({ length: mostARack }, (_, at) => mostARack + at + 1);
  const enough = more.find((turns) => doesFor({ ways, mostARack: turns }));
  if (enough !== undefined) mends.push({ by: 'longer', minutes: Math.ceil(enough * turnMinutes) });
  return mends;
}

/** The same lifters at the same racks, as if bands were no question. */
function withoutBands({ ways, mostARack }: GearAsked): GearAsked {
  return { ways: ways.map((byRack) => byRack.map((sets) => (sets.length > 0 ? [0n] : []))), mostARack };
}

function doesFor(asked: GearAsked): boolean {
  return shareGear({ ...asked, onlyAll: true }).rackOf.every((rack) => rack !== null);
}

/** The same ways with another pair just like one of them, under a bit of its own. */
function withOneMore(ways: GearAsked['ways'], like: bigint, bit: bigint): GearAsked['ways'] {
  const one = 1n << like;
  return ways.map((byRack) =>
    byRack.map((sets) => sets.flatMap((set) => (set & one ? [set, (set & ~one) | (1n << bit)] : [set]))),
  );
}
