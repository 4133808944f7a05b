import { normalCdf } from '../numeric/normal.ts';
import { DAY_FORMS, SET_SD_LN, speedSdMps } from './noise.ts';
import { DAY_SD } from './parameters.ts';

/** Mean speeds from `fromMps` to `toMps`. */
export interface SpeedZone {
  fromMps: number;
  toMps: number;
}

/** The speed (m/s) expected of a set on an average day, and by how much it changes with each unit of ln strength. */
export interface ExpectedSpeed {
  mps: number;
  perLnMps: number;
}

/**
 * Chance that the measured mean speed of one set lies in a zone: with the error of a set and of its day, the form of the day,
 * bad days among them, the set's luck, and what else is not known of the speed (m/s). All of it normal.
 */
export function chanceInZone(
  { fromMps, toMps }: SpeedZone,
  { mps, perLnMps }: ExpectedSpeed,
  lnDaySd: number,
  otherSdMps = 0,
): number {
  const daySdLn = DAY_SD * Math.exp(lnDaySd);
  const within = (meanMps: number, formSdLn: number) => {
    const sd = Math.hypot(speedSdMps(1), perLnMps * Math.hypot(formSdLn, SET_SD_LN), otherSdMps);
    return normalCdf((toMps - meanMps) / sd) - normalCdf((fromMps - meanMps) / sd);
  };
  return DAY_FORMS.reduce(
    (sum, { share, mean, sd }) => sum + share * within(mps + perLnMps * mean * daySdLn, sd * daySdLn),
    0,
  );
}
