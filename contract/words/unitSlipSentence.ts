import type { Lift } from '#contract/records/lift.ts';
import type { UnitSlip } from '#core/strength/unitSlips.ts';

type LooksLike = UnitSlip['looksLike'];

/** Why a set is kept out of the estimate that looks as if its bar had been written down wrongly; `count` sets do. */
export function unitSlipSentence(looksLike: LooksLike, count: number): string {
  const these = count === 1 ? 'This set looks' : `These ${count} sets look`;
  const bar = count === 1 ? 'It is' : 'They are';
  return `${these} ${likeWords[looksLike]}. ${bar} kept out of the estimate and nothing was changed: please check the bar that was written down, and if it is right say so with barChecked.`;
}

/** Sets of one lift that slipped alike; dates are the first and the last day. */
interface Slip {
  looksLike: LooksLike;
  lift: Lift;
  setCount: number;
  firstOn: string;
  lastOn: string;
}

/** Which sets look slipped, and like what: the question that a coach is asked. `of`: whose; empty where that stands above. */
export function slipQuestion(slip: Slip, of: string, dateText: (date: string) => string): string {
  const { looksLike, lift, setCount, firstOn, lastOn } = slip;
  const one = setCount === 1;
  const these = one ? `This ${liftOne[lift]}` : `These ${setCount} ${liftMany[lift]}`;
  const whose = of === '' ? '' : ` by ${of}`;
  const when =
    firstOn === lastOn ? `on ${dateText(firstOn)}` : `from ${dateText(firstOn)} to ${dateText(lastOn)}`;
  return `${these}${whose} ${when} ${one ? 'looks' : 'look'} ${likeWords[looksLike]}.`;
}

const likeWords: Record<LooksLike, string> = {
  pounds: 'like pounds written down as kilograms',
  tenfold: 'like a nought too many',
};
const liftOne: Record<Lift, string> = { squat: 'squat', bench: 'bench press', deadlift: 'deadlift' };
const liftMany: Record<Lift, string> = { squat: 'squats', bench: 'bench presses', deadlift: 'deadlifts' };
