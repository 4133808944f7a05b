import { expect, it } from 'vitest';
import { bareLoad } from '../load/bareLoad.ts';
import { compileLoad } from '../load/compileLoad.ts';
import { fitStrength } from './fitStrength.ts';
import { barGuessKg, strengthGuessN } from './limitGuess.ts';
import { squatCapability } from './tests/capabilities.ts';

const straight = { ...bareLoad(0.9, 1.5), barKg: 150 };
const hung = {
  ...straight,
  hungBands: [
    {
      verticalAt: [
        { zM: 0.9, forceN: 100 },
        { zM: 1.5, forceN: 800 },
      ],
      count: 1,
    },
  ],
  chains: [{ massPerMetreKg: 5, lengthM: 1.2, attachBelowBarM: 0, count: 2 }],
};

it('begins the search for a limit within an eighth of it, for other strength curves, starts and loads', () => {
  for (const load of [straight, hung])
    for (const slope of [0.3, 1.2])
      for (const [rebound, reboundTimeS] of [
        [0, 0.7],
        [0.35, 0.7],
        [0.35, 0.2],
      ] as const)
        for (const depth of [0, 0.2]) {
          const lifter = {
            ...squatCapability,
            slope,
            rebound,
            reboundTimeS,
            dip: { ...squatCapability.dip, depth },
          };
          const compiled = compileLoad(load);
          const strengthN = fitStrength(load, lifter);
          expect(Math.abs(strengthGuessN(compiled, lifter) / strengthN - 1)).toBeLessThan(1 / 8);
          // A bar is guessed to as much of all that is held at lockout.
          const heldKg = compiled.totalN(1.5) / load.gravityMps2 + lifter.movedBodyKg;
          const offKg = barGuessKg(compiled, { ...lifter, strengthN }) - load.barKg;
          expect(Math.abs(offKg)).toBeLessThan(heldKg / 8);
        }
});
