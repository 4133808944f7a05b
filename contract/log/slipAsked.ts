import type { Lift } from '#contract/records/lift.ts';
import type { LooksLike, MeantBar } from './meantBar.ts';

/**
 * What the coach can do with sets of a file that look slipped: as written, to be looked at later, where nothing is said; `checked`: as
 * written, since they are right.
 */
export const slipTakings = ['asWritten', 'asMeant', 'leftOut', 'checked'] as const;
export type SlipTaking = (typeof slipTakings)[number];

/** Sets of a file of one lifter and lift that slipped alike, as the coach is asked about them. */
export interface SlipAsked {
  /** Names the slip where the answer says what to do with it. */
  key: string;
  /** A name. */
  lifter: string;
  lift: Lift;
  looksLike: LooksLike;
  setCount: number;
  firstOn: string;
  lastOn: string;
  bars: MeantBar[];
}
