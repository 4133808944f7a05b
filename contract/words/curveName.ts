import type { BandModel } from '#core/band/BandCurve.ts';

const names: Record<BandModel, string> = {
  neoHookean: 'Neo-Hookean',
  mooneyRivlin: 'Mooney-Rivlin',
  yeoh: 'Yeoh',
  ogden1: 'Ogden with one term',
  ogden2: 'Ogden with two terms',
  line: 'a straight line',
  prior: 'the width alone',
};

/** What a band's curve is called, on screen and in the terminal. */
export function curveName(model: BandModel): string {
  return names[model];
}
