import { mondayOf } from '#contract/calendar/isoWeek.ts';
import { lift as liftShape, setupFamily } from '#contract/records/lift.ts';
import { outcome as outcomeShape } from '#contract/records/outcome.ts';
import { LEAST_WEEKS, MOST_WEEKS } from '#contract/records/planProblem.ts';
import { daysLater } from '#contract/words/dayWords.ts';
import { useInAddress } from '#web/parts/useInAddress.ts';

const USUAL_WEEKS = 16;

/** All that is chosen of a comparison before the draw, in the address: what is not one of the choices counts as the usual one. */
export function useWishInAddress(today: string) {
  const [outcome, setOutcome] = useInAddress('of', 'strength');
  const [lift, setLift] = useInAddress('lift', 'squat');
  const [way, setWay] = useInAddress('start', 'free');
  const [hung, setHung] = useInAddress('on', 'straight');
  const [first, setFirst] = useInAddress('first');
  const [second, setSecond] = useInAddress('second');
  const [startsOn, setStartsOn] = useInAddress('from', daysLater(mondayOf(today), 7));
  const [weeks, setWeeks] = useInAddress('weeks', String(USUAL_WEEKS));
  const [who, setWho] = useInAddress('who');
  const asked = Number(weeks);
  return {
    outcome: outcomeShape.safeParse(outcome).data ?? 'strength',
    lift: liftShape.safeParse(lift).data ?? 'squat',
    way: setupFamily.shape.way.safeParse(way).data ?? 'free',
    hung: setupFamily.shape.hung.safeParse(hung).data ?? 'straight',
    first,
    second,
    startsOn,
    weeks: Number.isInteger(asked) && asked >= LEAST_WEEKS && asked <= MOST_WEEKS ? asked : USUAL_WEEKS,
    lifterIds: who === '' ? [] : who.split(','),
    setOutcome,
    setLift,
    setWay,
    setHung,
    setFirst,
    setSecond,
    setStartsOn,
    setWeeks: (count: number) => setWeeks(String(count)),
    setLifterIds: (ids: readonly string[]) => setWho(ids.join(',')),
  };
}
