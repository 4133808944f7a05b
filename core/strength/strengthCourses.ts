import { shuffledShares } from '../numeric/shuffledShares.ts';
import type { StrengthPosterior } from './estimateStrength.ts';
import type { FilteredAnswer } from './filteredAnswers.ts';
import type { GridResult } from './gridFilter.ts';
import { driftKernels, type Lattice, STEP_LN } from './lattice.ts';
import type { Session } from './sessions.ts';

const COURSES_EACH = 9;

/**
 * Equally likely courses of ln strength with the whole log known, a value at the end of each of the last `weeks` weeks up to
 * `onDay`, the newest last; shorter where the log is younger. Drawn backwards through the grid filter.
 */
export function strengthCourses(
  { sessions }: Pick<StrengthPosterior, 'sessions'>,
  answers: readonly FilteredAnswer[],
  onDay: number,
  weeks: number,
): number[][] {
  const firstDay = sessions[0]?.day ?? onDay;
  const days = Array.from({ length: weeks + 1 }, (_, i) => onDay - 7 * (weeks - i)).filter(
    (day) => day >= firstDay,
  );
  // What came before the last session up to the first of these days is not asked for.
  const from = sessions.findLastIndex(({ day }) => day <= days[0]!);
  const late = sessions.slice(from);
  const shares = shuffledShares(COURSES_EACH * answers.length, late.length + 1);
  return answers.flatMap(({ parameters, strength, result }, answer) => {
    const filtered = result.filtered.slice(from);
    const fallShares = result.fallShares.slice(from);
    const kernelOf = driftKernels(parameters);
    return Array.from({ length: COURSES_EACH }, (_, i) => {
      const shareOf = (step: number) => shares[step]![COURSES_EACH * answer + i]!;
      const course = courseBack(late, { filtered, fallShares }, strength, kernelOf, onDay, shareOf);
      return days.map((day) => valueOn(late, course, day, onDay));
    });
  });
}

/** ln strength at every session and, last, on the day asked for. */
function courseBack(
  sessions: readonly Session[],
  { filtered, fallShares }: Pick<GridResult, 'filtered' | 'fallShares'>,
  last: Lattice,
  kernelOf: ReturnType<typeof driftKernels>,
  onDay: number,
  shareOf: (step: number) => number,
): number[] {
  let point = last.first + pick(last.weights, shareOf(sessions.length));
  const course = Array.from<number>({ length: sessions.length + 1 });
  course[sessions.length] = point * STEP_LN;
  for (let j = sessions.length - 1; j >= 0; j--) {
    const here = filtered[j]!;
    const weeks = ((sessions[j + 1]?.day ?? onDay) - sessions[j]!.day) / 7;
    const chosen = pick(before(point, here, kernelOf(weeks, fallShares[j + 1])), shareOf(j));
    point = chosen < 0 ? nearest(here, point) : here.first + chosen;
    course[j] = point * STEP_LN;
  }
  return course;
}

/** How likely each strength was before a step that led to a point. */
function before(point: number, { first, weights }: Lattice, kernel: Lattice): Float64Array {
  const likely = new Float64Array(weights.length);
  const offset = Math.round(point - first - kernel.first);
  for (let i = 0; i < likely.length; i++) likely[i] = weights[i]! * (kernel.weights[offset - i] ?? 0);
  return likely;
}

/** Index at which the sum of the weights passes a share of their total; -1 where they are all nought. */
function pick(weights: Float64Array, share: number): number {
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  let below = 0;
  return weights.findIndex((weight) => {
    below += weight;
    return below > 0 && below >= share * total;
  });
}

function nearest({ first, weights }: Lattice, point: number): number {
  return first + Math.min(Math.max(Math.round(point - first), 0), weights.length - 1);
}

/** Straight between sessions. */
function valueOn(
  sessions: readonly Session[],
  course: readonly number[],
  day: number,
  onDay: number,
): number {
  const dayAt = (i: number) => sessions[i]?.day ?? onDay;
  const next = course.findIndex((_, i) => dayAt(i) >= day);
  if (dayAt(next) === day) return course[next]!;
  const share = (day - dayAt(next - 1)) / (dayAt(next) - dayAt(next - 1));
  return course[next - 1]! + share * (course[next]! - course[next - 1]!);
}
