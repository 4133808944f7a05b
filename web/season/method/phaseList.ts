import type { PhaseOfMethod } from '#contract/records/method.ts';

/** The phases with one of them so many places later. */
export function movedPhase(phases: readonly PhaseOfMethod[], at: number, by: 1 | -1): PhaseOfMethod[] {
  return phases.toSpliced(at, 1).toSpliced(at + by, 0, phases[at]!);
}

/** The phases with another one just like one of them behind it, under an id and a title of its own. */
export function withCopyAfter(phases: readonly PhaseOfMethod[], at: number): PhaseOfMethod[] {
  const phase = phases[at]!;
  const taken = new Set(phases.flatMap(({ id, title }) => [id, title]));
  let next = 2;
  const titled = () => `${phase.title.slice(0, MOST_OF_TITLE)} ${next}`;
  while (taken.has(`phase-${next}`) || taken.has(titled())) next += 1;
  return phases.toSpliced(at + 1, 0, { ...phase, id: `phase-${next}`, title: titled() });
}

/** Leaves room for the number. */
const MOST_OF_TITLE = 56;
