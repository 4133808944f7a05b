/** What some sets come to, each way up counted: all figures of one lifter. */
export interface SessionWork {
  /** The bars with collars and discs, times reps: the trade's tonnage (kg). */
  liftedKg: number;
  /** Mechanical work done on bar, bands and chains (J). */
  workJ: number;
  /** Ways up and down, without the rest between sets (s); null where nothing tells it. */
  underBarS: number | null;
}

/** What groups come to together, and how it is known. */
export interface WorkKnown {
  work: SessionWork;
  /** Of how many groups by bar and bands, by shares of the maximum alone, and of how many nothing can be said. */
  workedOut: number;
  estimated: number;
  unknown: number;
}

const noWork: SessionWork = { liftedKg: 0, workJ: 0, underBarS: 0 };

/** Together; a time that is not known of one is not known of all. */
export function addedWork(all: readonly SessionWork[]): SessionWork {
  return all.reduce(
    (sum, one) => ({
      liftedKg: sum.liftedKg + one.liftedKg,
      workJ: sum.workJ + one.workJ,
      underBarS: sum.underBarS === null || one.underBarS === null ? null : sum.underBarS + one.underBarS,
    }),
    noWork,
  );
}
