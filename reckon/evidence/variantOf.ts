import type { Variant } from '#contract/evidence/evidenceReport.ts';
import type { HardLift } from './HardLift.ts';
import type { MeanPull } from './meanPull.ts';

/** The family of a lift: how it starts and what hangs on the bar. Bands that carry part of the bar are a family of their own. */
export function variantOf(lift: HardLift, pull: MeanPull): Variant {
  const { bands, chains, start } = lift.setup;
  return { lift: lift.lift, way: start.way, hung: hungOf(bands.length > 0, chains.length > 0, pull(lift)) };
}

function hungOf(bands: boolean, chains: boolean, pull: ReturnType<MeanPull>): Variant['hung'] {
  if (bands && pull !== null && pull.bandKg < 0) return 'lightened';
  if (bands) return chains ? 'bandsAndChains' : 'bands';
  return chains ? 'chains' : 'straight';
}
