import { curveName } from '#contract/words/curveName.ts';
import { bandTensionInterval } from '#core/band/bandTension.ts';
import { judgeForms } from '#core/band/judgeForms.ts';
import type { SideState } from '#web/gear/state/pairState.ts';
import type { LongestUse } from './longestUse.ts';

/** What a coach should know about a fitted curve, in whole sentences. */
export interface FitWords {
  /** Where the curve comes from, and why from there. */
  why: string;
  /** How far, and how well, it may be trusted. */
  trust: string;
  /** What one more reading would bring; null where nothing more is wanted. */
  next: string | null;
}

/** `say` writes a length with its unit; `safeM` is the longest that the club allows. */
export function fitWords(
  side: SideState,
  use: LongestUse | null,
  safeM: number,
  say: (lengthM: number) => string,
): FitWords {
  return { why: whyThis(side), trust: howFar(side, say), next: whatNext(side, use, safeM, say) };
}

function whyThis({ curves, restLengthM, readings }: SideState): string {
  const { model, direction } = curves.loading;
  if (model === 'prior') {
    return 'Drawn from the width alone: bands of one width differ by as much as half, so this is a guess until it hangs from a scale.';
  }
  if (model === 'line')
    return 'Two lengths give a straight line; from the third on, the curve bends as rubber does.';
  const judged = judgeForms(
    restLengthM,
    readings
      .filter((r) => r.direction === direction && r.lengthM > restLengthM)
      .toSorted((x, y) => x.lengthM - y.lengthM),
  ).toSorted((x, y) => x.leftOutShare - y.leftOutShare);
  const chosen = judged.find(({ form }) => form.name === model);
  const best = judged[0];
  if (!chosen || !best) return `Drawn by the formula called ${curveName(model)}.`;
  if (judged.length === 1) {
    return `Drawn by the formula called ${curveName(model)}, the only one for rubber that so few readings can settle; it predicts a left-out reading to ${errorText(chosen.leftOutShare)}.`;
  }
  if (chosen === best) {
    return `Drawn by the formula called ${curveName(model)}, which predicts a left-out reading best, to ${errorText(chosen.leftOutShare)}.`;
  }
  return `Drawn by the formula called ${curveName(model)}, which predicts a left-out reading to ${errorText(chosen.leftOutShare)}; no other curve does clearly better (${curveName(best.form.name)} ${errorText(best.leftOutShare)}).`;
}

function howFar({ curves, restLengthM }: SideState, say: (lengthM: number) => string): string {
  const { loading } = curves;
  if (loading.model === 'prior') {
    return 'Every number made with it carries that wide interval and says "not measured".';
  }
  const { tensionN, high95N } = bandTensionInterval(loading, loading.measuredToM);
  const times = (loading.measuredToM / restLengthM).toFixed(2);
  return `Trust it up to ${say(loading.measuredToM)} (${times} times its rest length), within ${errorText((high95N - tensionN) / tensionN)} there; beyond that it is drawn dashed and marked.`;
}

function whatNext(
  side: SideState,
  use: LongestUse | null,
  safeM: number,
  say: (lengthM: number) => string,
): string | null {
  const { curves, readToM, readings } = side;
  const { model } = curves.loading;
  if (readToM === null) return 'The first reading: hang something light, and read length and scale.';
  if (model === 'prior') return 'One more reading at another length gives a first line.';
  if (model === 'line') return 'A third reading at another length lets the curve bend.';
  const wantedM = use === null ? safeM : Math.min(use.lengthM, safeM);
  if (readToM < wantedM - withinM) {
    const where =
      use === null
        ? `the club allows ${say(safeM)}`
        : use.lengthM <= safeM
          ? `${use.place.hookup.label} on ${use.place.rack.label} stretches it to ${say(use.lengthM)} with the bar at ${say(use.barHeightM)}`
          : `${use.place.hookup.label} on ${use.place.rack.label} would stretch it beyond the ${say(safeM)} that the club allows`;
    return `Longest reading ${say(readToM)}; ${where}: hang more weight, up to ${say(wantedM)}.`;
  }
  const gap = widestGap(side);
  if (gap.toM - gap.fromM > 0.3 * side.restLengthM) {
    return `A reading near ${say((gap.fromM + gap.toM) / 2)}: between ${say(gap.fromM)} and ${say(gap.toM)} nothing was read.`;
  }
  if (readings.every(({ direction }) => direction === 'loading')) {
    return 'Readings while the weight is taken off again: they show how much less it pulls on the way back.';
  }
  return null;
}

/** Nearer than this to the wanted length is there. */
const withinM = 0.05;

function widestGap({ restLengthM, readings }: SideState): { fromM: number; toM: number } {
  const lengths = [
    restLengthM,
    ...readings.filter((r) => r.direction === 'loading').map((r) => r.lengthM),
  ].sort((x, y) => x - y);
  let widest = { fromM: restLengthM, toM: restLengthM };
  lengths.slice(1).forEach((toM, i) => {
    const fromM = lengths[i] ?? toM;
    if (toM - fromM > widest.toM - widest.fromM) widest = { fromM, toM };
  });
  return widest;
}

/** An error: to a tenth below ten per cent. */
function errorText(share: number): string {
  const value = Math.abs(share) * 100;
  return `${value < 9.95 ? value.toFixed(1) : value.toFixed(0)} %`;
}
