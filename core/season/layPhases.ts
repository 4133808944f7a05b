/** A stretch of training as a method asks for it: so many weeks, within bounds, in whole waves. */
export interface PhaseAsked {
  leastWeeks: number;
  mostWeeks: number;
  /** It grows by whole waves of so many weeks; both bounds are multiples of it. */
  waveWeeks: number;
  /** It belongs to the round that is gone through again where there is more time than one takes. */
  isRound: boolean;
  /** Where weeks lack, the phases with the lowest number keep theirs first. */
  keepsBefore: number;
}

export interface PhaseLaid {
  /** Index into the phases that were asked for. */
  phase: number;
  /** First week, counted from the first that there is. */
  week: number;
  weeks: number;
}

export interface Laid {
  phases: PhaseLaid[];
  /** Weeks at the front that no phase took: the season begins after them. */
  openWeeks: number;
  /** Indices of phases with fewer weeks than they ask for, down to none. */
  cut: number[];
}

/**
 * Lays phases backwards from a meet into the weeks that there are, the last of which is the week of the meet. Each phase gets its least weeks, in the
 * order in which they keep them; what is left goes to the phases a wave at a time in turn, the earliest first, each to its most; where one
 * round cannot take it, the round is gone through again before.
 */
export function layPhases(asked: readonly PhaseAsked[], weeks: number): Laid {
  const order = roundsFor(asked, weeks);
  const given = leastWeeks(asked, order, weeks);
  stretch(asked, order, given, weeks - sum(given));
  const openWeeks = weeks - sum(given);
  const phases: PhaseLaid[] = [];
  let week = openWeeks;
  order.forEach((phase, at) => {
    if (given[at]! > 0) phases.push({ phase, week, weeks: given[at]! });
    week += given[at]!;
  });
  const cut = order.filter((phase, at) => given[at]! < asked[phase]!.leastWeeks);
  return { phases, openWeeks, cut };
}

/** The phases in their order, the round as many times as its least weeks fit while fewer cannot take all weeks. */
function roundsFor(asked: readonly PhaseAsked[], weeks: number): number[] {
  const round = asked.flatMap(({ isRound }, phase) => (isRound ? [phase] : []));
  let order = asked.map((_, phase) => phase);
  if (round.length === 0) return order;
  const first = round[0]!;
  for (;;) {
    const more = [...order.slice(0, first), ...round, ...order.slice(first)];
    const takesAll = sumOf(asked, order, 'mostWeeks') >= weeks;
    if (takesAll || sumOf(asked, more, 'leastWeeks') > weeks) return order;
    order = more;
  }
}

function leastWeeks(asked: readonly PhaseAsked[], order: readonly number[], weeks: number): number[] {
  const given = order.map(() => 0);
  let left = weeks;
  // Among equals the later one is nearer to the meet.
  const places = order
    .map((_, at) => at)
    .toSorted((a, b) => keeps(asked, order, a) - keeps(asked, order, b) || b - a);
  for (const at of places) {
    given[at] = Math.min(asked[order[at]!]!.leastWeeks, left);
    left -= given[at];
  }
  return given;
}

function stretch(
  asked: readonly PhaseAsked[],
  order: readonly number[],
  given: number[],
  extraWeeks: number,
): void {
  let left = extraWeeks;
  for (let grew = true; grew; ) {
    grew = false;
    for (const [at, phase] of order.entries()) {
      const { mostWeeks, waveWeeks } = asked[phase]!;
      if (waveWeeks > left || given[at]! + waveWeeks > mostWeeks) continue;
      given[at]! += waveWeeks;
      left -= waveWeeks;
      grew = true;
    }
  }
}

const keeps = (asked: readonly PhaseAsked[], order: readonly number[], at: number) =>
  asked[order[at]!]!.keepsBefore;

const sum = (weeks: readonly number[]) => weeks.reduce((all, one) => all + one, 0);

const sumOf = (asked: readonly PhaseAsked[], order: readonly number[], bound: 'leastWeeks' | 'mostWeeks') =>
  sum(order.map((phase) => asked[phase]![bound]));
