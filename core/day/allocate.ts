import { solveInteger, solveRelaxed } from '#core/numeric/integerProgram.ts';
import type { Allocation, AllocationInput } from './Allocation.ts';
import { type AllocationModel, allocationModel, columnCost } from './allocationModel.ts';
import { handlingWeight, rotationChanges } from './handling.ts';
import { sharedStock } from './sharedStock.ts';
import { type Team, teamsOf } from './teams.ts';

/** Sets listed for each team before the prices say which more can matter. */
const FIRST_LISTED = 24;
/** New sets a team in each round of pricing. */
const ROUND_LISTED = 12;
const ROUNDS = 60;
/** More sets than this are never listed for one team; the bound then tells what that may cost. */
const MOST_LISTED = 600;
const EPSILON = 1e-9;

/**
 * Hangs bands and chains at several racks at once so that nobody needs a pair that hangs elsewhere, and
 * `sum(weight misfit) + handling` is least (model, "prescribing").
 *
 * An integer program picks one set for each lifter. It does not have to list all of the thousands: the relaxed
 * program over a short list gives prices for pairs, turns and changes, with which every set outside the list is priced.
 * While one would lower the relaxed optimum it is listed. A set whose price exceeds the distance between the relaxed
 * optimum and the best allocation found cannot be in a better one; all others are listed, and the program solved over
 * them is optimal over all sets.
 */
export async function allocate(input: AllocationInput): Promise<Allocation> {
  const teams = teamsOf(input);
  const model = allocationModel(input, teams);
  const listed = teams.map((team) => new Set(team.firstSets(FIRST_LISTED)));
  const relaxed = await priceOut(model, teams, listed);
  const first = await solveInteger(model.program(listed), input.timeLimitS);
  if (first === null) throw new Error('no allocation was found in time');
  const omitted = listWithin(relaxed, teams, listed, first.objective - relaxed.objective);
  const second = (await solveInteger(model.program(listed), input.timeLimitS)) ?? first;
  const bound = Math.min(second.bound, relaxed.objective + omitted);
  return describe(input, teams, model.chosenSets(second.values, listed), {
    status: second.status,
    bound: Math.min(bound, second.objective),
    gap: Math.max(0, second.objective - bound),
    listed: input.lifters.map((_, i) => listed[teams.findIndex((team) => team.lifters.includes(i))]!.size),
  });
}

interface Relaxed {
  objective: number;
  /** Cost of a team's set beyond what the prices pay for; never below the true reduced cost of its lower bound. */
  reducedCost(team: number, set: number, cost: number): number;
}

/** Lists sets until none outside the list would lower the relaxed optimum. */
async function priceOut(
  model: AllocationModel,
  teams: readonly Team[],
  listed: Set<number>[],
): Promise<Relaxed> {
  for (let round = 0; ; round++) {
    const solution = await solveRelaxed(model.program(listed));
    if (solution === null) throw new Error('the coach’s own choices cannot hang at once');
    const reducedCost: Relaxed['reducedCost'] = (team, set, cost) =>
      cost -
      model.rowsOf(team, set).reduce((sum, { row, factor }) => sum + factor * solution.rowPrices[row]!, 0);
    let added = 0;
    let unpaid = 0;
    teams.forEach((team, t) => {
      const cheap: { set: number; reduced: number }[] = [];
      for (let set = 0; set < team.sets.length; set++) {
        if (
          listed[t]!.has(set) ||
          reducedCost(t, set, columnCost(team, set, team.lowerBound(set))) >= -EPSILON
        )
          continue;
        const reduced = reducedCost(t, set, columnCost(team, set, team.misfit(set)));
        if (reduced < -EPSILON) cheap.push({ set, reduced });
      }
      cheap.sort((a, b) => a.reduced - b.reduced || a.set - b.set);
      unpaid += Math.min(0, cheap[0]?.reduced ?? 0);
      for (const { set } of cheap.slice(0, ROUND_LISTED)) listed[t]!.add(set);
      added += cheap.length;
    });
    // One set a team: what is still unpaid bounds how far the relaxed optimum could fall.
    if (added === 0 || round === ROUNDS) return { objective: solution.objective + unpaid, reducedCost };
  }
}

/** Lists every set that may be in an allocation better than the one found; returns the least price of the rest. */
function listWithin(
  relaxed: Relaxed,
  teams: readonly Team[],
  listed: readonly Set<number>[],
  gap: number,
): number {
  let omitted = Number.POSITIVE_INFINITY;
  teams.forEach((team, t) => {
    const within: { set: number; reduced: number }[] = [];
    for (let set = 0; set < team.sets.length; set++) {
      if (listed[t]!.has(set)) continue;
      let reduced = relaxed.reducedCost(t, set, columnCost(team, set, team.lowerBound(set)));
      if (reduced < gap) reduced = relaxed.reducedCost(t, set, columnCost(team, set, team.misfit(set)));
      if (reduced < gap) within.push({ set, reduced });
      else omitted = Math.min(omitted, reduced);
    }
    within.sort((a, b) => a.reduced - b.reduced || a.set - b.set);
    const room = Math.max(0, MOST_LISTED - listed[t]!.size);
    for (const { set } of within.slice(0, room)) listed[t]!.add(set);
    omitted = Math.min(omitted, within[room]?.reduced ?? Number.POSITIVE_INFINITY);
  });
  return omitted;
}

function describe(
  input: AllocationInput,
  teams: readonly Team[],
  setOfTeam: readonly number[],
  proof: Allocation['proof'],
): Allocation {
  const chosen = input.lifters.map(({ ranking }, i) => {
    const { index, barKg, misfit } = ranking.scoreOf(
      setOfTeam[teams.findIndex((team) => team.lifters.includes(i))]!,
    );
    return { set: ranking.sets[index]!, barKg, misfit };
  });
  const racks = input.racks.map((_, rack) => {
    const changes = rotationChanges(
      chosen.filter((_, i) => input.lifters[i]!.rack === rack).map(({ set }) => set),
    );
    return { changes, handlingMinutes: changes * input.bandChangeMinutes };
  });
  const misfit = chosen.reduce((sum, setup, i) => sum + input.lifters[i]!.weight * setup.misfit, 0);
  const minutes = racks.reduce((sum, rack) => sum + rack.handlingMinutes, 0);
  const clashes = sharedStock(input)
    .filter(({ clash }) => clash)
    .map(({ id, sort }) => ({ id, sort }));
  const hung = setOfTeam.reduce((sum, set, t) => sum + columnCost(teams[t]!, set, 0), 0);
  const total = misfit + handlingWeight(input.oneSetPull) * minutes + hung;
  return { chosen, misfit, racks, total, proof, clashes };
}
