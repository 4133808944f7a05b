import type { Allocation } from '#core/day/Allocation.ts';
import { allocate } from '#core/day/allocate.ts';
import type { RackGear } from '#core/day/Gear.ts';
import { rankLifters } from '#core/day/rankLifters.ts';
import { freeSearch } from '#core/day/SearchRules.ts';
import { splitDiscs } from '#core/day/splitDiscs.ts';

/** What the program itself allows; here of the processor's time, since the machine may have other work. */
const LIMIT_MS = 3000;

interface Size {
  lifters: number;
  racks: number;
  oneSetPull: number;
  gearOf: (racks: number) => RackGear[];
}

/** Invented lifters at racks with two hookups a pair: ranking and allocation, up to 60 lifters and the largest stock. */
export async function run(): Promise<void> {
  const usual = { oneSetPull: 0.5, gearOf: (racks: number) => rackGears(racks, 12) };
  measure({ ...usual, lifters: 4, racks: 1 });
  const reference = measure({ ...usual, lifters: 4, racks: 1 });
  console.log(
    'day allocation (invented club, share of capability held at 75 %); one = four lifters at one rack, 12 pairs:',
  );
  for (const [lifters, racks] of [
    [8, 2],
    [12, 3],
    [20, 3],
    [40, 4],
    [60, 12],
  ] as const)
    print({ ...usual, lifters, racks }, reference.ms);
  console.log('along the coach’s slider:');
  for (const oneSetPull of [0, 0.05, 0.25, 0.5, 0.75, 1])
    print({ ...usual, lifters: 12, racks: 3, oneSetPull }, reference.ms);
  console.log('60 pairs and 6 kinds of 10 chain pairs, the most that is taken:');
  for (const [lifters, racks] of [
    [1, 1],
    [12, 3],
    [60, 12],
  ] as const)
    print(
      { lifters, racks, oneSetPull: 0.5, gearOf: (count) => Array.from({ length: count }, largestGear) },
      reference.ms,
    );
}

function print(size: Size, referenceMs: number): void {
  const { ms, allocation } = measure(size);
  const { proof, total, racks } = allocation;
  const changes = racks.reduce((sum, rack) => sum + rack.changes, 0);
  console.log(
    `  ${size.lifters} lifters, ${size.racks} racks, slider ${size.oneSetPull}: ${ms.toFixed(0)} ms of processor = ` +
      `${(ms / referenceMs).toFixed(1)} of one, ${proof.status}, total ${total.toFixed(4)}, ` +
      `gap ${((100 * proof.gap) / total).toFixed(2)} %, ${changes} changes a round` +
      (proof.setsLeftOut > 0 ? `, ${proof.setsLeftOut.toExponential(1)} sets not tried` : ''),
  );
}

/** Ranks and allots within the limit. */
function measure({ lifters, racks, oneSetPull, gearOf }: Size): { ms: number; allocation: Allocation } {
  const gears = gearOf(racks);
  const before = process.cpuUsage();
  const usedMs = () => {
    const { user, system } = process.cpuUsage(before);
    return (user + system) / 1000;
  };
  const spent = () => usedMs() / LIMIT_MS;
  const given = Array.from({ length: lifters }, (_, i) => ({
    task: taskOf(i),
    rack: i % racks,
    fixed: { barKg: null, set: null },
  }));
  const ready = rankLifters(given, gears, freeSearch, spent).flatMap((ranked, i) =>
    'ranking' in ranked ? [{ rack: i % racks, ranking: ranked.ranking, weight: 1, setFixed: false }] : [],
  );
  const allocation = allocate({
    racks: gears,
    lifters: ready,
    bandChangeMinutes: 1,
    oneSetPull,
    outOfTime: () => spent() > 1,
  });
  return { ms: usedMs(), allocation };
}

/** A spread of sizes and strengths without chance: multiples of the golden ratio, modulo 1. */
function spread(i: number, step: number): number {
  return (i * 0.6180339887498949 * step + 0.37) % 1;
}

function taskOf(i: number) {
  const bottomM = 0.75 + 0.25 * spread(i, 1);
  const lockoutM = bottomM + 0.5 + 0.15 * spread(i, 2);
  return {
    capability: {
      strengthN: 1200 + 3000 * spread(i, 3),
      slope: 1.2,
      curvature: -0.5,
      dip: { depth: 0.2, at: 0.4, width: 0.2 },
      maxSpeedMps: 1.6,
      rebound: 0.35,
      reboundTimeS: 0.7,
      strainAfterS: 2.5,
      strainTimeS: 6,
      buildUpTimeS: 0,
      builtShare: 0,
      easing: 0,
      movedBodyKg: 45 + 50 * spread(i, 5),
      range: { fromM: bottomM, toM: lockoutM },
    },
    travel: { bottomM, lockoutM, gravityMps2: 9.80665, path: [] },
    aim: { by: 'capability' as const, bottomShare: 0.75, lockoutShare: 0.75 },
    referenceKg: 200,
  };
}

function rackGears(racks: number, pairs: number): RackGear[] {
  const discs = [25, 20, 15, 10, 5, 2.5, 1.25].map((massKg) => ({ massKg, pairs: 3 * racks }));
  return splitDiscs(discs, racks).map((share) => ({
    barKg: 20,
    collarsKg: 5,
    discs: share,
    chains: [],
    hookups: Array.from({ length: 2 * pairs }, (_, k) => {
      const [pair, way] = [k >> 1, k % 2];
      const stiffnessN = (120 + 110 * pair) * (1 + way);
      return {
        pairId: `pair ${pair}`,
        hookupId: way === 0 ? 'single' : 'doubled',
        anchorId: 'low peg',
        ratedLoadN: null,
        rigged: [],
        measured: {
          count: 1,
          verticalAt: [
            { zM: 0.85 - 0.25 * way, forceN: 0 },
            { zM: 1.5, forceN: stiffnessN },
          ],
        },
      };
    }),
  }));
}

/** The most that the contract takes: 60 hookups and six kinds of ten pairs of chain. */
function largestGear(): RackGear {
  return {
    barKg: 20,
    collarsKg: 5,
    discs: [25, 20, 15, 10, 5, 2.5, 1.25].map((massKg) => ({ massKg, pairs: 8 })),
    chains: Array.from({ length: 6 }, (_, kind) => ({
      chainPairId: `chain ${kind}`,
      pairs: 10,
      chain: { massPerMetreKg: 3 + 2 * kind, lengthM: 1.2 + 0.15 * kind, attachBelowBarM: 0.1, count: 2 },
    })),
    hookups: Array.from({ length: 60 }, (_, pair) => ({
      pairId: `pair ${pair}`,
      hookupId: 'single',
      anchorId: 'low peg',
      ratedLoadN: null,
      rigged: [],
      measured: {
        count: 1,
        verticalAt: [
          { zM: 0.6 + 0.005 * pair, forceN: 0 },
          { zM: 1.5, forceN: 60 + 22 * pair },
        ],
      },
    })),
  };
}
