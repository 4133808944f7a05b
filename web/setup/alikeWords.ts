import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { MassUnit } from '#contract/words/viewUnits.ts';
import { oneDecimal } from '#contract/words/written.ts';
import { alikeSets } from '#reckon/log/alikeSets.ts';
import { repsWords } from './setWords.ts';

/** Alike sets in words: "8 × 3 at 67.5 kg", "4 × 8 at 60 kg, made 8, 7, 5, 3"; a single one as `repsWords` has it. */
export function alikeWords(alike: readonly LoggedSet[], mass: MassUnit): string {
  const [first] = alike;
  if (first === undefined) return '';
  if (alike.length === 1) return repsWords(first, { mass });
  const done = `${alike.length} × ${first.reps} at ${barWords(first, mass)}`;
  const missed = alike.some(({ made, reps }) => made < reps);
  return missed ? `${done}, made ${alike.map(({ made }) => made).join(', ')}` : done;
}

/** Everything of one setup and day: "8 × 2 at 50 kg"; a way up to the top in one breath, "singles at 87.5, 95, 100 kg". */
export function sessionWords(sets: readonly LoggedSet[], mass: MassUnit): string {
  const [first] = sets;
  if (first === undefined) return '';
  const alike = alikeSets(sets);
  const isWayUp =
    alike.length > 1 &&
    alike.every((group) => group.length === 1) &&
    sets.every(({ reps, made }) => made === reps && reps === first.reps);
  if (!isWayUp) return alike.map((group) => alikeWords(group, mass)).join('; ');
  const bars = sets.map(({ setup }) => oneDecimal(setup.barKg, mass)).join(', ');
  return `${first.reps === 1 ? 'singles' : `${first.reps} reps`} at ${bars} ${mass}`;
}

function barWords({ setup }: LoggedSet, mass: MassUnit): string {
  return `${oneDecimal(setup.barKg, mass)} ${mass}`;
}
