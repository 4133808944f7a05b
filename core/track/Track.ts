/** Where the bar was at one moment: height, and its place fore-aft where that was followed too. */
export interface TrackPoint {
  tS: number;
  zM: number;
  xM: number | null;
}

/** A way up that was found in a track. */
export interface TrackRep {
  made: boolean;
  /** When the bar left the bottom, and when it reached lockout or, missed, its highest place. */
  startS: number;
  endS: number;
  bottomM: number;
  topM: number;
  meanSpeedMps: number;
  peakSpeedMps: number;
  /** Where a miss stopped: 0 at the bottom of the range found, 1 at its lockout; null: it was made. */
  stoppedAtS: number | null;
  /** From the foremost to the hindmost place on the way up (m); null where x was not followed. */
  swayM: number | null;
  /** The longest time without a reading on the way up (s). */
  gapS: number;
}

/** A track made even and smooth, and the reps in it. */
export interface TrackReading {
  rateHz: number;
  cutoffHz: number;
  startS: number;
  /** Height (m) and speed upward (m/s), `rateHz` of them a second from `startS` on. */
  zM: Float64Array;
  speedMps: Float64Array;
  /** Bottom and lockout of the reps; null where there is no rep. */
  range: { bottomM: number; lockoutM: number } | null;
  reps: TrackRep[];
}
