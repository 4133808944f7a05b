import { expectTypeOf, test } from 'vitest';
import type { withBarKg } from '#core/load/compileLoad.ts';
import type { Load } from '#core/load/Load.ts';
import type { Capability } from '#core/rep/Capability.ts';
import type { chanceToSpare } from '#core/strength/askDraws.ts';
import type { Draw } from '#core/strength/Draw.ts';
import type { StrengthPosterior } from '#core/strength/estimateStrength.ts';
import type { strengthPrior } from '#core/strength/parameters.ts';
import type { ReadModel } from '#core/strength/readGroup.ts';
import type { SetEvidence } from '#core/strength/SetEvidence.ts';
import type { setModel } from '#core/strength/setModel.ts';
import type { GearPull } from './gearPull.ts';
import type { LifterTask } from './misfit.ts';
import type { MostLoad } from './mostLoad.ts';
import type { SearchBounds } from './SearchRules.ts';

// The compiler is the test: each of these lines is an error where the mix-up would pass.

test('a force is no mass on the bar, and no mass a force', () => {
  expectTypeOf<Capability['strengthN']>().not.toExtend<Load['barKg']>();
  expectTypeOf<SetEvidence['barKg']>().not.toExtend<Capability['strengthN']>();
  expectTypeOf<GearPull['lockoutN']>().not.toExtend<MostLoad['lockoutKg']>();
  expectTypeOf<GearPull['lockoutN']>().not.toExtend<Parameters<typeof withBarKg>[1]>();
});

test('a share of the maximum is no bar, and no maximum a share', () => {
  expectTypeOf<SearchBounds['leastBarShare']>().not.toExtend<MostLoad['barKg']>();
  expectTypeOf<LifterTask['referenceKg']>().not.toExtend<SearchBounds['mostBandShare']>();
  expectTypeOf<MostLoad['heaviestStep']>().not.toExtend<MostLoad['lockoutKg']>();
});

test('ln of a mass is no mass, and what is to spare is no strength', () => {
  expectTypeOf<Draw['lnTotal']>().not.toExtend<SetEvidence['movedBodyKg']>();
  expectTypeOf<SetEvidence['movedBodyKg']>().not.toExtend<Parameters<typeof setModel>[2]>();
  expectTypeOf<ReadModel['straightLn']>().not.toExtend<Parameters<typeof chanceToSpare>[0]>();
});

test('what is believed of strength over body mass is not what is believed of strength', () => {
  expectTypeOf<ReturnType<typeof strengthPrior>>().not.toExtend<StrengthPosterior['start']>();
});

test('a plain number passes, so that nothing has to be cast', () => {
  expectTypeOf<number>().toExtend<Load['barKg']>();
  expectTypeOf<Load['barKg']>().toExtend<number>();
});
