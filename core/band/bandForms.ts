import type { BandForm } from './BandForm.ts';
import { mooneyRivlin } from './mooneyRivlin.ts';
import { neoHookean } from './neoHookean.ts';
import { ogden1, ogden2 } from './ogden.ts';
import { yeoh } from './yeoh.ts';

/** The candidates for a band's curve, the fewest parameters first. */
export const bandForms: readonly BandForm[] = [neoHookean, mooneyRivlin, ogden1, yeoh, ogden2];

export function bandForm(name: BandForm['name']): BandForm {
  return bandForms.find((form) => form.name === name)!;
}
