/**
 * What lifters who stay usually gain, as a share of their total a week: men of 513.3 kg 0.15 kg a day, women of 289.4 kg 0.12 (Latella et
 * al. 2020, J Strength Cond Res 34:2412): 0.0020 and 0.0029. Early years and those who went on weigh heavily, so it is rather too much
 * than too little to hope for.
 */
export const USUAL_GAIN_A_WEEK = 0.002;

export interface Hope {
  /** All of a usual gain up to the end, in ln: one way would have to bring it and the other nothing. */
  wholeGainLn: number;
  known: 'club' | 'published';
}

/** By the club's own log, where that shows more than is published. */
export function hopeFor(weeks: number, clubGainPerWeek: number | null): Hope {
  const isOwn = clubGainPerWeek !== null && clubGainPerWeek > USUAL_GAIN_A_WEEK;
  return {
    wholeGainLn: weeks * (isOwn ? clubGainPerWeek : USUAL_GAIN_A_WEEK),
    known: isOwn ? 'club' : 'published',
  };
}

/** Whether what could be seen is as small as what may be hoped for. */
export type Outlook = 'canBeSeen' | 'onlyGreat' | 'cannotBeSeen';

/** One way better than the other by half a usual gain is a great deal (judgement). */
export const HOPED_SHARE = 0.5;

export function outlookOf(detectableLn: number | null, { wholeGainLn }: Hope): Outlook {
  if (detectableLn === null || detectableLn > wholeGainLn) return 'cannotBeSeen';
  return detectableLn > HOPED_SHARE * wholeGainLn ? 'onlyGreat' : 'canBeSeen';
}

/** About how many lifters in all would show a difference of half a usual gain, everything else the same: the error falls with the square root of their number. */
export function liftersNeeded(lifters: number, detectableLn: number, { wholeGainLn }: Hope): number {
  return 2 * Math.ceil((lifters * (detectableLn / (HOPED_SHARE * wholeGainLn)) ** 2) / 2);
}
