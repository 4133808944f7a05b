import { type Allocation } from '#core/day/Allocation.ts';
import { allocate } from '#core/day/allocate.ts';
import type { RackGear } from '#core/day/Gear.ts';
import { rankSetups } from '#core/day/rankSetups.ts';
import { splitDiscs } from '#core/day/splitDiscs.ts';

/** What the program itself allows. */
const LIMIT_MS = 3000;

/** Invented lifters at racks with two hookups a pair: ranking and allocation, from 4 to 40 lifters. */
export async function run(): Promise<void> {
  await measure(2, 1, 2, 0.5);
  console.log('day allocation (invented club, share of capability held at 75 %):');
  for (const [lifters, racks, pairs] of [
    [4, 1, 12],
    [8, 2, 12],
    [12, 3, 12],
    [20, 3, 12],
    [40, 4, 12],
  ] as const) {
    await measure(lifters, racks, pairs, 0.5, true);
  }
  console.log('12 lifters, 3 racks, 12 pairs along the coach’s slider:');
  for (const oneSetPull of [0, 0.1, 0.3, 0.7, 0.9, 1]) await measure(12, 3, 12, oneSetPull, true);
}

async function measure(
  lifters: number,
  racks: number,
  pairs: number,
  oneSetPull: number,
  print = false,
): Promise<void> {
  const gears = rackGears(racks, pairs);
  const started = performance.now();
  const input = {
    racks: gears,
    lifters: Array.from({ length: lifters }, (_, i) => {
      const rack = i % racks;
      return { rack, weight: 1, setFixed: false, ranking: rankSetups(taskOf(i), gears[rack]!) };
    }),
    bandChangeMinutes: 1,
    oneSetPull,
    outOfTime: () => performance.now() > ranked + LIMIT_MS,
  };
  const ranked = performance.now();
  const cpu = process.cpuUsage();
  const allocation = allocate(input);
  const { user, system } = process.cpuUsage(cpu);
  const ms = { rank: ranked - started, solve: performance.now() - ranked, cpu: (user + system) / 1000 };
  if (print) console.log(line({ lifters, racks, pairs, oneSetPull }, ms, allocation));
}

function line(
  size: { lifters: number; racks: number; pairs: number; oneSetPull: number },
  ms: { rank: number; solve: number; cpu: number },
  { proof, total, racks }: Allocation,
): string {
  const changes = racks.reduce((sum, rack) => sum + rack.changes, 0);
  return (
    `  ${size.lifters} lifters, ${size.racks} racks, ${size.pairs} pairs, slider ${size.oneSetPull}: ` +
    `ranked in ${ms.rank.toFixed(0)} ms, allocated in ${ms.solve.toFixed(0)} ms (${ms.cpu.toFixed(0)} ms of processor), ` +
    `${proof.status}, total ${total.toFixed(4)}, gap ${proof.gap.toExponential(1)}, ${changes} changes a round`
  );
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
