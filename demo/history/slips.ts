import type { Chance } from './Chance.ts';
import type { Draft } from './draftSet.ts';

/** Share of gym sets that somebody wrote down wrongly. */
const SLIP_SHARE = 0.008;
const LB_PER_KG = 2.204_622_6;

/**
 * Spoils a few gym sets as hurried people do: a disc too many or too few, the pounds of an old bar sheet, reps and sets
 * swapped, the bar of whoever lifted next. Nothing in the log tells which. Listed bests stay as they are.
 */
export function withSlips<D extends Draft>(
  drafts: readonly D[],
  isListed: (draft: D) => boolean,
  chance: Chance,
): { draft: D; isSpoilt: boolean }[] {
  return drafts.map((draft, index) => {
    if (draft.platform || isListed(draft) || !chance.happens(SLIP_SHARE)) return { draft, isSpoilt: false };
    const spoilt = spoil(draft, drafts, index, chance);
    return { draft: spoilt, isSpoilt: spoilt !== draft };
  });
}

function spoil<D extends Draft>(draft: D, drafts: readonly D[], index: number, chance: Chance): D {
  const { barKg } = draft.setup;
  const withBar = (kg: number): D => ({ ...draft, setup: { ...draft.setup, barKg: kg } });
  const kind = chance.between(0, 1);
  if (kind < 0.45) return withBar(Math.max(20, barKg + chance.pick([-20, -10, -10, 10, 10, 20])));
  if (kind < 0.6) return withBar(Math.round(2 * barKg * LB_PER_KG) / 2);
  if (kind < 0.75 && draft.reps > 1 && draft.made === draft.reps) return { ...draft, ...swapped(draft) };
  const other = drafts
    .slice(Math.max(0, index - 200), index + 200)
    .find(
      ({ day, lift, lifterId }) => day === draft.day && lift === draft.lift && lifterId !== draft.lifterId,
    );
  return other ? withBar(other.setup.barKg) : withBar(barKg + 10);
}

/** Eight sets of two written as a set of eight. */
function swapped({ reps, meanSpeedsMps }: Draft): Partial<Draft> {
  const wrong = reps === 2 ? 8 : reps === 8 ? 4 : 1;
  return { reps: wrong, made: wrong, meanSpeedsMps: meanSpeedsMps.slice(0, 1) };
}
