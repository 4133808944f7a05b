import * as fc from 'fast-check';
import { expect, it } from 'vitest';
import { lightened } from './lightened.ts';

const workAt = (barKg: number) => ({ barKg });

it('is the heaviest loadable bar that is likely enough, down to six tenths of what was asked, whichever way discs round', () => {
  const roundings = fc.constantFrom(Math.floor, Math.ceil, Math.round);
  const steps = fc.constantFrom(2.5, 5, 20);
  fc.assert(
    fc.property(
      fc.integer({ min: 10, max: 250 }),
      fc.integer({ min: 0, max: 260 }),
      roundings,
      steps,
      (asked, mostKg, rounded, stepKg) => {
        const loadableKg = (kg: number) => stepKg * rounded(kg / stepKg);
        const askedKg = loadableKg(asked);
        const isLikely = ({ barKg }: { barKg: number }) => barKg <= mostKg;
        const lightestKg = loadableKg(0.6 * askedKg);
        const bars = Array.from({ length: 300 / stepKg }, (_, i) => i * stepKg).filter(
          (kg) => lightestKg <= kg && kg <= askedKg && kg <= mostKg,
        );
        const { barKg } = lightened(workAt(askedKg), workAt, loadableKg, isLikely);
        expect(barKg).toBe(bars.at(-1) ?? askedKg);
      },
    ),
  );
});

const other = (barKg: number) => ({ barKg, note: 'made anew' });

it('gives back the work that was asked as it was where that is likely, or nothing lighter would be', () => {
  const asked = { barKg: 100, note: 'as asked' };
  for (const isLikely of [() => true, () => false])
    expect(lightened(asked, other, Math.round, isLikely)).toBe(asked);
});
