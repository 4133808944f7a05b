/** One week of one lifter as the season's picture has it. Shares are of the reference maximum. */
export interface SeasonWeek {
  /** Which pattern its phase has, see `phasePatternId`; null: no phase lies here. */
  pattern: number | null;
  isNewPhase: boolean;
  isNewWave: boolean;
  /** On average over the lifts of the week: the bar alone, and of bands at lockout; null: nothing that names a share. */
  barShare: number | null;
  bandShare: number | null;
  /** The heaviest lift of the week at lockout. */
  peakShare: number | null;
  /** How much of the training falls to absence or a closed gym. */
  away: 'all' | 'some' | null;
  isRestricted: boolean;
  isByHand: boolean;
}

/** One lifter's season: as many weeks as the picture has. */
export interface SeasonRowScene {
  key: string;
  name: string;
  weeks: readonly SeasonWeek[];
  /** In weeks from the left edge: the middle of the day. */
  meetsAt: readonly number[];
}

/** How large a row is drawn. */
export interface SeasonFrame {
  weekPx: number;
  weeks: number;
  rowPx: number;
  /** In weeks from the left edge; null: today lies outside. */
  todayAt: number | null;
}

/** On screen a row is more than a thumb high. */
export const screenRowPx = 56;

/** The strip of the phases above, the loads below it (px from the top of the row). */
export function rowParts(rowPx: number) {
  const px = (share: number) => Math.round(share * rowPx);
  const floor = Math.max(LEAST_STRIP_PX, px(0.27));
  return { strip: { top: px(0.05), floor }, load: { top: floor + px(0.05), floor: px(0.95) } };
}

/** A pattern is told apart from the next one down to this height. */
const LEAST_STRIP_PX = 9;

/** What floor and top of the loads stand for. Nothing that trains is lighter; nothing but a single above the maximum is heavier. */
export const LEAST_SHARE = 0.3;
const MOST_SHARE = 1;

/** Where a share lies in a row (px from its top). The loads begin at `LEAST_SHARE`, so that a wave is seen to step. */
export function shareY(share: number, rowPx: number): number {
  const { top, floor } = rowParts(rowPx).load;
  const inside = Math.min(MOST_SHARE, Math.max(LEAST_SHARE, share));
  return round(floor - ((inside - LEAST_SHARE) / (MOST_SHARE - LEAST_SHARE)) * (floor - top));
}

/** A tenth of a pixel is seen by nobody, and spares half of the letters. */
function round(px: number): number {
  return Math.round(10 * px) / 10;
}
