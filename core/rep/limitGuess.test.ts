import { expect, it } from 'vitest';
import { bareLoad } from '../load/bareLoad.ts';
import { compileLoad } from '../load/compileLoad.ts';
import { fitStrength } from './fitStrength.ts';
import { limitPlaces } from './limitGuess.ts';
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
      for (const rebound of [0, 0.35])
        for (const depth of [0, 0.2]) {
          const lifter = { ...squatCapability, slope, rebound, dip: { ...squatCapability.dip, depth } };
          const guesses = limitPlaces(compileLoad(load), { ...lifter, strengthN: 1 }).map(
            ({ pushN, otherN }) => (otherN + load.barKg * load.gravityMps2) / pushN,
          );
          const guess = Math.max(...guesses);
          expect(Math.abs(guess / fitStrength(load, lifter) - 1)).toBeLessThan(1 / 8);
        }
});
