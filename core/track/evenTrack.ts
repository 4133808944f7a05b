import type { TrackPoint } from './Track.ts';

export interface EvenTrack {
  rateHz: number;
  startS: number;
  zM: Float64Array;
  xM: Float64Array | null;
}

/** As many readings a second as usual in the track, straight lines between its points, whatever their spacing. */
export function evenTrack(points: readonly TrackPoint[]): EvenTrack {
  const rateHz = usualRateHz(points);
  const startS = points[0]!.tS;
  const count = Math.floor((points[points.length - 1]!.tS - startS) * rateHz + 1e-6) + 1;
  const zM = new Float64Array(count);
  const xM = points.every((point) => point.xM !== null) ? new Float64Array(count) : null;
  let low = 0;
  for (let i = 0; i < count; i++) {
    const tS = startS + i / rateHz;
    while (low < points.length - 2 && points[low + 1]!.tS <= tS) low++;
    const a = points[low]!;
    const b = points[low + 1]!;
    const share = Math.min(1, (tS - a.tS) / (b.tS - a.tS));
    zM[i] = a.zM + share * (b.zM - a.zM);
    if (xM) xM[i] = a.xM! + share * (b.xM! - a.xM!);
  }
  return { rateHz, startS, zM, xM };
}

/** One over the middle one of all steps in time. */
export function usualRateHz(points: readonly TrackPoint[]): number {
  const steps = points.slice(1).map((point, i) => point.tS - points[i]!.tS);
  steps.sort((a, b) => a - b);
  return 1 / steps[Math.floor(steps.length / 2)]!;
}
