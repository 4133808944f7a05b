import type { PlanGroup } from '#contract/day/dayPlan.ts';
import type { Aim } from '#contract/records/day.ts';
import { lacksLog } from '#reckon/day/lacksLog.ts';

/**
 * What each aim begins with. Percentages: common practice, no source. Shares of capability: what those percentages come to
 * for the lifters of the demo by their logs (`aimToBegin`; docs/model.md, "day"). Speed: judgement.
 */
export const firstAim: Record<Aim['by'], Aim> = {
  percent: {
    by: 'percent',
    targets: [
      { basis: 'bar', share: 0.5 },
      { basis: 'lockout', share: 0.75 },
    ],
  },
  capability: { by: 'capability', bottomShare: 0.75, lockoutShare: 0.39 },
  speed: { by: 'speed', fromMps: 0.6, toMps: 0.8 },
};

/**
 * The same line by bests alone: most lifters are taken to be stronger at the top and weaker at the bottom than the demo's logs show,
 * so that 75 and 39 % would ask them for more bands.
 */
export const shareByBests = { bottomShare: 0.82, lockoutShare: 0.26 };

/** An aim at shares looks no higher in the lift's range (docs/model.md, "day"). */
const MATTERS_TO = 0.85;

/**
 * What a group's aim begins with when it changes to another kind: shares of capability with those that the plan at hand
 * comes to, in the mean of its lifters, so that the change of kind alone changes little. Those worked out by a best alone count only where
 * no log was read: they come to another line, which would leave the others' bars bare.
 */
export function aimToBegin(by: Aim['by'], plan: Pick<PlanGroup, 'places'> | null): Aim {
  const places = plan?.places ?? [];
  const byLogs = places.filter((place) => place.solved !== null && !lacksLog(place));
  const lines = (byLogs.length > 0 ? byLogs : places).flatMap(({ solved }) => {
    const shares = solved?.blocks.at(-1)?.explanation.shares.filter(({ s }) => s <= MATTERS_TO + 1e-9);
    return shares && shares.length > 1 ? [lineThrough(shares)] : [];
  });
  if (by !== 'capability' || lines.length === 0) return firstAim[by];
  const asked = (of: (line: { atBottom: number; atLockout: number }) => number) => {
    const mean = lines.reduce((sum, line) => sum + of(line), 0) / lines.length;
    return Math.min(1.2, Math.max(0.1, Math.round(100 * mean) / 100));
  };
  return {
    by,
    bottomShare: asked(({ atBottom }) => atBottom),
    lockoutShare: asked(({ atLockout }) => atLockout),
  };
}

/** Least squares, carried on to lockout. */
function lineThrough(points: readonly { s: number; share: number }[]) {
  const meanS = points.reduce((sum, { s }) => sum + s, 0) / points.length;
  const meanShare = points.reduce((sum, { share }) => sum + share, 0) / points.length;
  const slope =
    points.reduce((sum, { s, share }) => sum + (s - meanS) * (share - meanShare), 0) /
    points.reduce((sum, { s }) => sum + (s - meanS) ** 2, 0);
  return { atBottom: meanShare - slope * meanS, atLockout: meanShare + slope * (1 - meanS) };
}
