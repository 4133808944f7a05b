/** A bar is lightened no further than to this share of what was asked (judgement). */
const LIGHTEST_SHARE = 0.6;

/**
 * The heaviest loadable work, from what was asked down, that is likely enough; what was asked where no bar down to six
 * tenths of it would do. `isLikely` must not turn false again as the bar gets lighter. Bars in kg.
 */
export function lightened<Work extends { barKg: number }>(
  asked: Work,
  workAt: (barKg: number) => Work,
  loadableKg: (targetKg: number) => number,
  isLikely: (work: Work) => boolean,
): Work {
  if (isLikely(asked)) return asked;
  let low = loadableKg(LIGHTEST_SHARE * asked.barKg);
  let found = workAt(low);
  if (!isLikely(found)) return asked;
  let high = asked.barKg;
  // Halving down to neighbouring loadable bars.
  for (;;) {
    const middle = loadableKg((low + high) / 2);
    if (middle <= low || middle >= high) return found;
    const work = workAt(middle);
    if (isLikely(work)) {
      low = middle;
      found = work;
    } else high = middle;
  }
}
