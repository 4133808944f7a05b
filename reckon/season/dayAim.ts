import type { Aim } from '#contract/records/day.ts';
import type { AimInTurn } from '#contract/records/method.ts';

/** Where in a phase a week lies, each from 0. */
export interface WeekAt {
  wave: number;
  weekOfWave: number;
}

export interface AimOfWeek {
  aim: Aim;
  leastTimesBodyMass: number | null;
  bandShare: number | null;
  /** What it comes to, as shares of the reference maximum; null where the aim names none. */
  lockoutShare: number | null;
  meanShare: number | null;
}

/** The aims of one week as the day screen has them: one, or one for each level of strength, the least strong first. */
export function aimsOfWeek(asked: AimInTurn, { wave, weekOfWave }: WeekAt): AimOfWeek[] {
  switch (asked.by) {
    case 'percent': {
      const targets = asked.targets.map(({ basis, shares }) => ({
        basis,
        share: inTurn(shares, weekOfWave),
      }));
      return [{ aim: { by: 'percent', targets }, ...noLevel, ...sharesOf(targets) }];
    }
    case 'barAndBands':
      return [{ leastTimesBodyMass: null, bandShares: asked.bandShares }, ...asked.levels].map(
        ({ leastTimesBodyMass, bandShares }) => {
          const bar = { basis: 'bar' as const, share: inTurn(asked.barShares, weekOfWave) };
          const bandShare = inTurn(bandShares, wave);
          const all = { basis: 'lockout' as const, share: toThousandth(bar.share + bandShare) };
          const targets = bandShare === 0 ? [bar] : [bar, all];
          return { aim: { by: 'percent', targets }, leastTimesBodyMass, bandShare, ...sharesOf(targets) };
        },
      );
    case 'capability': {
      const bottomShare = inTurn(asked.bottomShares, weekOfWave);
      const lockoutShare = inTurn(asked.lockoutShares, weekOfWave);
      return [{ aim: { by: 'capability', bottomShare, lockoutShare }, ...noLevel, ...noShares }];
    }
    case 'speed':
      return [
        { aim: { by: 'speed', ...inTurn(asked.zones, weekOfWave), of: asked.of }, ...noLevel, ...noShares },
      ];
  }
}

/** An aim that the coach set, for everybody alike. */
export function aimByHand(aim: Aim): AimOfWeek {
  if (aim.by !== 'percent') return { aim, ...noLevel, ...noShares };
  const shares = sharesOf(aim.targets);
  const bar = aim.targets.find(({ basis }) => basis === 'bar')?.share;
  const hasBands = bar !== undefined && shares.lockoutShare !== null && shares.lockoutShare > bar;
  const bandShare = hasBands ? toThousandth(shares.lockoutShare! - bar) : null;
  return { aim, leastTimesBodyMass: null, bandShare, ...shares };
}

/** A sum in floating point may miss a whole thousandth by this. */
const ROUNDING = 1e-9;

/** The same with all shares less in one proportion, down to whole thousandths; an aim at none stays. */
export function scaledAim(of: AimOfWeek, factor: number): AimOfWeek {
  if (of.aim.by !== 'percent') return of;
  const less = (share: number) => Math.floor(1000 * share * factor + ROUNDING) / 1000;
  const targets = of.aim.targets.map(({ basis, share }) => ({ basis, share: less(share) }));
  const bandShare = of.bandShare && less(of.bandShare);
  return { ...of, aim: { by: 'percent', targets }, bandShare, ...sharesOf(targets) };
}

type Targets = Extract<Aim, { by: 'percent' }>['targets'];

/** Before anything hangs: of what bands add at lockout `LEFT_AT_BOTTOM` is taken to be left at the bottom, and the way between to be straight. */
function sharesOf(targets: Targets): Pick<AimOfWeek, 'lockoutShare' | 'meanShare'> {
  const share = (basis: Targets[number]['basis']) => targets.find((target) => target.basis === basis)?.share;
  const bar = share('bar');
  const lockoutShare = share('lockout') ?? bar ?? null;
  if (lockoutShare === null) return { lockoutShare, meanShare: share('mean') ?? null };
  const bands = lockoutShare - (bar ?? lockoutShare);
  return {
    lockoutShare,
    meanShare: share('mean') ?? toThousandth(lockoutShare - (bands * (1 - LEFT_AT_BOTTOM)) / 2),
  };
}

/** Common practice, no source. */
const LEFT_AT_BOTTOM = 0.45;

/** The entry of a week or a wave; the last one stands for those that follow. */
export function inTurn<Each>(list: readonly Each[], at: number): Each {
  return list[Math.min(at, list.length - 1)]!;
}

const noLevel = { leastTimesBodyMass: null, bandShare: null };
const noShares = { lockoutShare: null, meanShare: null };

/** Shares are typed in points and halves of a point; sums of them stay readable. */
export function toThousandth(share: number): number {
  return Math.round(share * 1000) / 1000;
}
