import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Lift } from '#contract/records/lift.ts';
import { type LifeCourse, lifeEffect } from './lifeCourse.ts';
import type { TrueLifter } from './TrueLifter.ts';
import { dayOf } from './trueBody.ts';
import { askedKg, trueTask } from './trueTask.ts';

/**
 * True strength of an invented lifter in a lift over two years, as ln of the straight total mass (bar and moved body,
 * kg) that can just be lifted raw on an ordinary day:
 *
 *   ln T(day) = a + b ln(trained + day - first) + BODY ln body(day) + what life did
 *
 * Gains that run with ln time: Steele et al. 2022 (Res Q Exerc Sport, abstract). `a` and `b` are those at which the
 * invented bests come out nearest (least squares), so that history and bests are of one piece.
 */
export type StrengthCourse = (day: number) => number;

/** Share of a change of body mass that strength follows: invented. */
const BODY = 0.5;
/** A best lies so much below what was there that day, on average: invented. */
const BELOW = 0.012;
/** What is expected of the gain before any best is seen, and how sure that is beside how sure a best is. */
const GAIN = 0.1;
const GAIN_SD = 0.35;
const BEST_SD = 0.025;

export function strengthCourse(
  records: ClubRecords,
  { lifter, lifts }: TrueLifter,
  lift: Lift,
  life: LifeCourse,
  bodyOn: (day: number) => number,
  today: string,
): StrengthCourse {
  const own = lifts[lift];
  const known = (day: number) => BODY * Math.log(bodyOn(day)) + lifeEffect(life, lift, day);
  const grown = (day: number) => Math.log((own.trainedDays + day - life.firstDay) / own.trainedDays);
  const points = records.best
    .filter((best) => best.lifterId === lifter.id && best.lift === lift)
    .map((best) => {
      const day = dayOf(best.doneOn, today);
      const totalKg = best.setup.barKg + own.movedShare * bodyOn(day);
      const asked = askedKg(trueTask(records, lifter.id, own, best, today), totalKg);
      return { x: grown(day), y: Math.log(asked) + BELOW - known(day) };
    });
  const { a, b } = likelyLine(points);
  return (day) => a + b * grown(day) + known(day);
}

/** The straight line y = a + b x through points, its slope drawn a little to what is expected and never below nought. */
function likelyLine(points: readonly { x: number; y: number }[]): { a: number; b: number } {
  const mean = (pick: (point: { x: number; y: number }) => number) =>
    points.reduce((sum, point) => sum + pick(point), 0) / points.length;
  const [meanX, meanY] = [mean(({ x }) => x), mean(({ y }) => y)];
  const sum = (pick: (dx: number, dy: number) => number) =>
    points.reduce((total, { x, y }) => total + pick(x - meanX, y - meanY), 0);
  const doubt = (BEST_SD / GAIN_SD) ** 2;
  const b = Math.max(0, (sum((dx, dy) => dx * dy) + doubt * GAIN) / (sum((dx) => dx * dx) + doubt));
  return { a: meanY - b * meanX, b };
}
