import { setupKey } from '#contract/log/setupKey.ts';
import type { KeptSetup } from './useKeptSetups.ts';

/** A setup by its exact key, without the bar or anything else that came with it. */
export function setupToKeep({ lift, equipment, setup }: Omit<KeptSetup, 'id'>): KeptSetup {
  const { rackId, start, bands, chains } = setup;
  return {
    id: setupKey({ lift, equipment, setup }),
    lift,
    equipment,
    setup: { rackId, start, bands, chains },
  };
}
