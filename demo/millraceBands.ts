import type { ClubRecords } from '#contract/records/allKinds.ts';
import { dayFrom } from './dayFrom.ts';
import { type InventedPair, inventedPairs } from './inventedPairs.ts';
import { readScale } from './readScale.ts';
import { type RubberLoop, rubberLoopN } from './rubberLoop.ts';

type Bands = Pick<ClubRecords, 'bandPair' | 'bandReading'>;

/** On the way back a loop pulls a little less. Assumption: 4 %; published losses are small below twice the length. */
const BACK_SHARE = 0.96;

/** Band pairs of the invented club with their readings, as a coach would have taken them. */
export function millraceBands(today: string): Bands {
  return {
    bandPair: inventedPairs.map((pair) => ({
      id: pairId(pair.label),
      label: pair.label,
      widthMm: pair.widthMm,
      restLengthAM: pair.restM[0],
      restLengthBM: pair.restM[1],
      nominalKg: pair.nominalKg,
      installedOn: dayFrom(today, -pair.installedDaysAgo),
      cycles: pair.cycles,
      retiredOn: null,
      note: pair.note,
    })),
    bandReading: inventedPairs.flatMap((pair, index) => readingsOf(pair, index, today)),
  };
}

/** Tension of both loops of an invented pair together, each drawn to `lengthM`; what the scale at a rack would feel. */
export function inventedPairN(label: string, lengthM: number): number {
  const pair = inventedPairs.find((candidate) => candidate.label === label);
  if (!pair) throw new Error(`The invented club has no band pair ${label}.`);
  return rubberLoopN(loopOf(pair, 0), lengthM) + rubberLoopN(loopOf(pair, 1), lengthM);
}

function pairId(label: string): string {
  return `band-${label.toLowerCase()}`;
}

function loopOf(pair: InventedPair, side: 0 | 1): RubberLoop {
  return { widthMm: pair.widthMm, restLengthM: pair.restM[side], level: pair.level[side] };
}

function readingsOf(pair: InventedPair, pairIndex: number, today: string): ClubRecords['bandReading'] {
  return pair.measured.flatMap((measuring, measuringIndex) =>
    ([0, 1] as const).flatMap((side) =>
      measuring.lengthsM.map((lengthM, index) => {
        const share = (measuring.soft ?? 1) * (measuring.direction ? BACK_SHARE : 1);
        const seed = 1 + index + 20 * (side + 2 * (measuringIndex + 4 * pairIndex));
        return {
          id: `${pairId(pair.label)}-${measuringIndex + 1}${side === 0 ? 'a' : 'b'}${index + 1}`,
          bandPairId: pairId(pair.label),
          side: side === 0 ? ('a' as const) : ('b' as const),
          takenOn: dayFrom(today, -measuring.daysAgo),
          lengthM,
          forceN: readScale(share * rubberLoopN(loopOf(pair, side), lengthM), seed),
          direction: measuring.direction ?? ('loading' as const),
        };
      }),
    ),
  );
}
