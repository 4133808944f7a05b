import type { PlanCaution } from '#contract/day/explainedBar.ts';
import { percent } from './percent.ts';

type Restricted = Pick<
  Extract<PlanCaution, { code: 'restricted' }>,
  'leastBoxM' | 'mostShare' | 'shareOf' | 'untilOn'
> & { mostKg: number | null };

/** How dates and quantities are written. */
interface Spelt {
  date(localDate: string): string;
  height(metres: number): string;
  mass(kg: number): string;
}

/** What a lifter is held to: "Restricted until 18 Dec 2026: no deeper than on a box of 36 cm; at lockout at most 90 % of the maximum (198 kg)." */
export function restrictedSentence(
  { leastBoxM, mostShare, mostKg, shareOf, untilOn }: Restricted,
  { date, height, mass }: Spelt,
): string {
  const until = untilOn === null ? 'until further notice' : `until ${date(untilOn)}`;
  const kilos = mostKg === null ? '' : ` (${mass(mostKg)})`;
  const limits = [
    ...(leastBoxM === null ? [] : [`no deeper than on a box of ${height(leastBoxM)}`]),
    ...(mostShare === null
      ? []
      : [
          `${shareOf === 'bar' ? 'on the bar' : 'at lockout'} at most ${percent(mostShare)} of the maximum${kilos}`,
        ]),
  ];
  return `Restricted ${until}: ${limits.join('; ')}.`;
}
