import { describe, expect, it } from 'vitest';
import { lostLn, RESTED } from '../effort/fatigue.ts';
import { repTable } from '../effort/repTable.ts';
import { walkSet } from '../effort/walkSession.ts';
import type { Lift } from '../lifter/populationShape.ts';
import { bareLoad } from '../load/bareLoad.ts';
import { compileLoad } from '../load/compileLoad.ts';
import type { Draw } from './Draw.ts';
import { drawCapability } from './drawCapability.ts';
import { drawTiring } from './drawTiring.ts';
import { liftModelOf } from './estimateStrength.ts';
import { populationPrior } from './parameters.ts';
import { readerOf } from './readGroup.ts';
import { tabulateResponse } from './response.ts';
import { setModel } from './setModel.ts';

// The tables of the estimate and the reps of a session are two ways to the same count.
describe.each([
  ['squat', 0.5, 88, 60],
  ['squat', -0.5, 88, 200],
  ['deadlift', 0.4, 32, 150],
  ['bench', -0.4, 0, 100],
] as const)(
  '%s with a bend of %s, %s kg of body and %s kg on the bar',
  (name, tiringBend, movedBodyKg, barKg) => {
    const lift: Lift = name;
    const range = lift === 'bench' ? { fromM: 0.65, toM: 1.02 } : { fromM: 0.5, toM: 1.1 };
    const straight = { load: bareLoad(range.fromM, range.toM), start: 'free' as const, range };
    const model = liftModelOf(lift, straight);
    const draw: Draw = { ...populationPrior(lift).mean, tiringBend, lnTotal: Math.log(barKg + movedBodyKg) };
    const totalKg = barKg + movedBodyKg;
    const response = tabulateResponse(straight, model.shape, model.tiring, totalKg, totalKg);
    const { table } = readerOf(draw, model)(setModel(response, 'free', Math.log(totalKg), movedBodyKg));
    const capability = drawCapability(draw, lift, straight, { ...straight, movedBodyKg, equipment: 'raw' });
    const compiled = compileLoad({ ...straight.load, barKg });
    const tiring = drawTiring(draw, lift);
    const limitN = repTable(compiled, capability, tiring.loweringS)!.limitN;
    /** Reps of a lifter with so much to spare. */
    const reps = (surplusLn: number) => {
      const strong = { ...capability, strengthN: limitN * Math.exp(surplusLn) };
      const steps = walkSet(repTable(compiled, strong, tiring.loweringS)!, 20, tiring, RESTED);
      return steps.filter((step) => step.surplusLn >= 0).length;
    };

    it.each([2, 3, 5, 8])(
      'makes %s reps with what the tables say they take, and not with 3 % less of it',
      (count) => {
        const needed = table.neededFor(count);
        expect(reps(1.03 * needed)).toBe(count);
        expect(reps(0.97 * needed)).toBe(count - 1);
      },
    );

    it('leaves missing for the next set what its reps cost without the bend', () => {
      const at = 0.3;
      const strong = { ...capability, strengthN: limitN * Math.exp(at) };
      const [step] = walkSet(repTable(compiled, strong, tiring.loweringS)!, 1, tiring, RESTED);
      expect(lostLn(step!.after) / table.lossOfSet(at, 1)).toBeCloseTo(1, 1);
    });
  },
);
