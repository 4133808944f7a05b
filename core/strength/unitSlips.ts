import { leastAboveGap } from './leastAboveGap.ts';
import { equipmentParameter, type Prior } from './parameters.ts';
import { type LiftModel, readerOf } from './readGroup.ts';
import type { SetEvidence } from './SetEvidence.ts';
import type { SetModel } from './setModel.ts';

/** In which way a bar looks as if it had been written down wrongly. */
export const unitSlipKinds = ['pounds', 'tenfold'] as const;

/** Sets whose bars look as if they had been written down in another unit or with a nought too many. */
export interface UnitSlip {
  looksLike: (typeof unitSlipKinds)[number];
  /** Indices of the sets. */
  sets: number[];
}

/** What a slip multiplies the number on the bar by; the pound is exact (NIST SP 811). */
const FACTORS: Record<UnitSlip['looksLike'], number> = { pounds: 1 / 0.45359237, tenfold: 10 };
/** How a day's hardest made set scatters about the usual hardest one of a week, as ln of straight total mass (judgement). */
const DAY_SD_LN = 0.15;
/** Chance that a day begins a run written with a slip, and that one ends it (judgement). */
const BEGINS = 1 / 300;
const ENDS = 1 / 10;
/** A slip is said where it is so probable. */
const SURE = 0.95;
/** Fewer other weeks tell nothing of what is usual; half a year on either side is asked. */
const FEWEST_WEEKS = 4;
const NEAR_WEEKS = 26;
/** A slipped day with no other one so near stands by itself (judgement). */
const ALONE_DAYS = 14;
const DAYS_A_WEEK = 7;

/**
 * Days whose hardest made set stands far above what other weeks show, just by what pounds for kilograms or a nought too many make of
 * it: two hidden states, as written or slipped, weighed by the forward-backward sums over the days; a nought too many befalls one set alone.
 * The median over the weeks about it of the hardest set of each tells what is usual, so that a heavy day among light ones is none of these. Above
 * it the scatter is normal, for nobody is twice as strong for a day; below it Student's, for days are light. Bars that are too
 * small are not looked for: they make nobody stronger. A log that is all in pounds cannot be told from a stronger lifter's.
 * On a day by itself one bar alone is often written down wrongly: what stands there below a gap is right, if it is no harder, as
 * written, than usual. A bar that somebody looked at and found right is never taken for a slip.
 */
export function unitSlips(
  sets: readonly SetEvidence[],
  models: readonly (SetModel | null)[],
  lift: LiftModel,
  prior: Prior,
): UnitSlip[] {
  const read = readerOf(prior.mean, lift);
  /** ln of the straight total mass that a set stands for if its bar was `factor` times too large. */
  const demandLn = (i: number, factor: number) => {
    const { barKg, movedBodyKg, made, equipment } = sets[i]!;
    const { straightLn, table } = read(models[i]!);
    const worn = equipmentParameter[equipment];
    const lighterLn = Math.log((barKg / factor + movedBodyKg) / (barKg + movedBodyKg));
    return straightLn + lighterLn + table.neededFor(made) - (worn === null ? 0 : prior.mean[worn]);
  };
  const isOpen = (i: number) => !sets[i]!.barChecked;
  const days = daysOf(sets, models).map(({ day, members }) => ({
    day,
    week: Math.floor(day / DAYS_A_WEEK),
    members: members.filter(isOpen),
    made: members.filter((i) => sets[i]!.made > 0),
  }));
  const hardest = (members: readonly number[], factor: number) =>
    Math.max(...members.map((i) => demandLn(i, factor)));
  const usual = usualByWeek(days.map(({ week, made }) => ({ week, demandLn: hardest(made, 1) })));
  if (usual === null) return [];
  const offLn = (members: readonly number[], week: number, factor: number) =>
    hardest(members, factor) - usual.get(week)!;
  const isTenfold = (i: number, week: number) => {
    const fit = (factor: number) => lnFit(offLn([i], week, factor));
    return fit(FACTORS.tenfold) + Math.log(BEGINS) > Math.max(fit(1), fit(FACTORS.pounds));
  };
  const tenfold = days.flatMap(({ week, made }) => made.filter((i) => isOpen(i) && isTenfold(i, week)));
  const others = days.map(({ day, week, members, made }) => {
    const rest = made.filter((i) => isOpen(i) && !tenfold.includes(i));
    const lnRatio =
      rest.length === 0 ? 0 : lnFit(offLn(rest, week, FACTORS.pounds)) - lnFit(offLn(rest, week, 1));
    return { day, week, members: members.filter((i) => !tenfold.includes(i)), lnRatio };
  });
  const chances = slipped(others.map(({ lnRatio }) => lnRatio));
  const inPounds = others.filter(({ members }, d) => members.length > 0 && chances[d]! > SURE);
  const isAlone = (day: number) =>
    inPounds.every((other) => other.day === day || Math.abs(other.day - day) > ALONE_DAYS);
  const slippedOf = ({ day, week, members }: (typeof others)[number]) => {
    const leastKg = leastAboveGap(members.map((i) => sets[i]!.barKg));
    const below = members.filter((i) => sets[i]!.barKg < leastKg);
    const belowMade = below.filter((i) => sets[i]!.made > 0);
    const isRight = isAlone(day) && offLn(belowMade, week, 1) <= DAY_SD_LN;
    return isRight ? members.filter((i) => !below.includes(i)) : members;
  };
  const found: UnitSlip[] = [
    { looksLike: 'pounds', sets: inPounds.flatMap(slippedOf) },
    { looksLike: 'tenfold', sets: tenfold },
  ];
  return found.filter((slip) => slip.sets.length > 0);
}

/** Days on which anything was made, oldest first, with the indices of all their sets. */
function daysOf(
  sets: readonly SetEvidence[],
  models: readonly (SetModel | null)[],
): { day: number; members: number[] }[] {
  const days = new Map<number, number[]>();
  sets.forEach(({ day }, i) => {
    if (models[i] === null) return;
    const members = days.get(day) ?? [];
    members.push(i);
    days.set(day, members);
  });
  return [...days]
    .filter(([, members]) => members.some((i) => sets[i]!.made > 0))
    .sort(([a], [b]) => a - b)
    .map(([day, members]) => ({ day, members }));
}

/** For each week the median of the hardest sets of the weeks about it, itself left out; null: too few weeks. */
function usualByWeek(days: readonly { week: number; demandLn: number }[]): Map<number, number> | null {
  const hardest = new Map<number, number>();
  for (const { week, demandLn } of days)
    hardest.set(week, Math.max(demandLn, hardest.get(week) ?? Number.NEGATIVE_INFINITY));
  const weeks = [...hardest];
  if (weeks.length <= FEWEST_WEEKS) return null;
  return new Map(
    weeks.map(([week], w) => {
      const near = weeks
        .slice(Math.max(0, w - NEAR_WEEKS), w + NEAR_WEEKS + 1)
        .filter(([other]) => other !== week)
        .map(([, demandLn]) => demandLn)
        .sort((a, b) => a - b);
      return [week, near[Math.floor(near.length / 2)]!];
    }),
  );
}

function lnFit(offLn: number): number {
  const square = (offLn / DAY_SD_LN) ** 2;
  return offLn > 0 ? -square / 2 : -2.5 * Math.log(1 + square / 4);
}

/** Probability of each day that it was slipped, by ln of how much likelier that makes it. */
function slipped(lnRatios: readonly number[]): number[] {
  const ratios = lnRatios.map((ln) => Math.exp(Math.min(Math.max(ln, -MOST_LN), MOST_LN)));
  const filtered: number[] = [];
  let share = BEGINS;
  for (const ratio of ratios) {
    const after = (share * ratio) / (share * ratio + 1 - share);
    filtered.push(after);
    share = after * (1 - ENDS) + (1 - after) * BEGINS;
  }
  const both = ratios.map(() => 0);
  // Backwards: how much likelier what follows is after a slipped day than after one as written.
  let ahead = 1;
  for (let d = ratios.length - 1; d >= 0; d--) {
    const now = filtered[d]!;
    both[d] = (now * ahead) / (now * ahead + 1 - now);
    const on = ahead * ratios[d]!;
    ahead = ((1 - ENDS) * on + ENDS) / (BEGINS * on + 1 - BEGINS);
  }
  return both;
}
/** Beyond it one day alone would decide about its neighbours. */
const MOST_LN = 30;
