import { shortDate } from '#contract/words/dayWords.ts';
import { oneDecimal } from '#contract/words/written.ts';
import { useClub } from '#web/api/useClub.ts';
import { useLastTimes } from '#web/api/useLastTimes.ts';
import { useInAddress } from '#web/parts/useInAddress.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { alikeWords } from '#web/setup/alikeWords.ts';
import { setupWords } from '#web/setup/setWords.ts';
import { meanOfSpeeds, speedText } from '#web/setup/speedWords.ts';

/** The last time of one lifter in words, each part to stand beside the same part of this time. */
export interface LastTimeWords {
  on: string;
  bar: string;
  /** True loads; null as in `LastTime`. */
  bottom: string | null;
  lockout: string | null;
  setup: string;
  /** "8 × 2 at 105 kg". */
  work: string;
  speed: string;
}

/** Whether last time stands beside this time, in the page's address. */
export function useBeside(): [boolean, (beside: boolean) => void] {
  const [beside, setBeside] = useInAddress('beside');
  return [beside === 'lastTime', (on) => setBeside(on ? 'lastTime' : '')];
}

/** What the lifters of a group did the last time, each once it is wanted. */
export function useLastTime(dayId: string, groupId: string, wanted: boolean) {
  const club = useClub();
  const units = useUnits();
  const told = useLastTimes(dayId, wanted);
  return (lifterId: string): LastTimeWords | null => {
    const then = told.find((one) => one.groupId === groupId && one.lifterId === lifterId);
    const [first] = then?.sets ?? [];
    if (!wanted || then === undefined || first === undefined) return null;
    const kept = (kg: number | null) => (kg === null ? null : oneDecimal(kg, units.mass));
    return {
      on: shortDate(first.doneOn),
      bar: oneDecimal(first.setup.barKg, units.mass),
      bottom: kept(then.bottomKg),
      lockout: kept(then.lockoutKg),
      setup: setupWords(club, first, units),
      work: alikeWords(then.sets, units.mass),
      speed: speedText(meanOfSpeeds(then.sets)),
    };
  };
}
