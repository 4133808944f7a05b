import { normalQuantile } from '#core/numeric/normal.ts';
import type { BandReading } from './BandCurve.ts';
import { SAME_LENGTH_M } from './lengthGroups.ts';
import { readingErrorN } from './readingErrorN.ts';

type Dated = BandReading & { takenOn: string };

/** A reading that lies far below what another day's readings of the same loop say at its length. */
export interface FarBelow {
  reading: Dated;
  other: { takenOn: string; forceN: number };
}

/** So much of its force no band loses from one measuring to the next without being worn out: a slip is likelier (judgement). */
const LOST_SHARE = 0.25;
/** Chance that a reading is questioned though it only scatters (assumption). */
const QUESTIONED_IN_VAIN = 0.05;

/**
 * Compares a reading with the nearest other day that was read in the same direction at this length, or at a shorter and a longer
 * one: between these the force is taken to run straight, which no band that gives way ever more slowly lies below. Far
 * below: by more than a quarter, and by more than the reading errors of both explain. Null: it is not.
 */
export function farBelow(reading: Dated, others: readonly Dated[]): FarBelow | null {
  const alike = others.filter(
    ({ direction, takenOn }) => direction === reading.direction && takenOn !== reading.takenOn,
  );
  const away = ({ takenOn }: { takenOn: string }) =>
    Math.abs(Date.parse(takenOn) - Date.parse(reading.takenOn));
  const said = [...new Set(alike.map(({ takenOn }) => takenOn))].flatMap((takenOn) => {
    const forceN = forceAt(
      alike.filter((one) => one.takenOn === takenOn),
      reading.lengthM,
    );
    return forceN === null ? [] : [{ takenOn, forceN }];
  });
  const [other] = said.toSorted((a, b) => away(a) - away(b));
  if (!other) return null;
  const leastN = (1 - LOST_SHARE) * other.forceN;
  const sdN = Math.hypot(readingErrorN(other.forceN), readingErrorN(reading.forceN));
  const isFar = reading.forceN < leastN - normalQuantile(1 - QUESTIONED_IN_VAIN) * sdN;
  return isFar ? { reading, other } : null;
}

/** Force of one day's readings at a length, straight between those beside it; null outside of them. */
function forceAt(readings: readonly Dated[], lengthM: number): number | null {
  const same = readings.filter((one) => Math.abs(one.lengthM - lengthM) < SAME_LENGTH_M);
  if (same.length > 0) return same.reduce((sum, { forceN }) => sum + forceN, 0) / same.length;
  const sorted = readings.toSorted((a, b) => a.lengthM - b.lengthM);
  const shorter = sorted.findLast((one) => one.lengthM < lengthM);
  const longer = sorted.find((one) => one.lengthM > lengthM);
  if (!shorter || !longer) return null;
  const share = (lengthM - shorter.lengthM) / (longer.lengthM - shorter.lengthM);
  return shorter.forceN + share * (longer.forceN - shorter.forceN);
}
