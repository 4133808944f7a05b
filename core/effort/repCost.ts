/** With this rep as the pivot a set of eight costs the same whatever the bend: the geometric mean of 1 to 7. */
const PIVOT_REP = 3.38;

/** What the effort of rep `rep` (from 1) of a set costs, in times that of a lifter without any bend: (rep / 3.38)^bend. */
export function repCost(rep: number, bend: number): number {
  return bend === 0 ? 1 : (rep / PIVOT_REP) ** bend;
}

/** The same for one bend, each rep worked out once. */
export function repCosts(bend: number): (rep: number) => number {
  const known: number[] = [];
  return (rep) => {
    while (known.length < rep) known.push(repCost(known.length + 1, bend));
    return known[rep - 1]!;
  };
}
