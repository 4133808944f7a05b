import { toSi } from '#core/units/units.ts';
import type { ChartUnits } from '#web/charts/ChartUnits.ts';
import type { Units } from './ViewUnits.tsx';

/** The units of a view as drawings want them; `gravityMps2` is the club's. */
export function chartUnits(units: Pick<Units, 'mass' | 'length'>, gravityMps2: number): ChartUnits {
  return {
    massUnit: units.mass,
    newtonPerMass: toSi(1, units.mass) * gravityMps2,
    lengthUnit: units.length,
    metrePerLength: toSi(1, units.length),
  };
}
