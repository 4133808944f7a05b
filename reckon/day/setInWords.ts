import type { OtherSetup } from '#contract/day/otherSetup.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import { hookupWords } from '#contract/words/hookupWords.ts';
import type { GearSet } from '#core/day/Gear.ts';
import { recordById } from '#reckon/gear/recordById.ts';
import type { AssembledRack } from './assembleRackGear.ts';

/** A set of the rack's gear as records and in the club's words. */
export function setInWords(
  records: ClubRecords,
  { gear }: Pick<AssembledRack, 'gear'>,
  set: GearSet,
): OtherSetup['set'] {
  return {
    bands: set.hookups.map((index) => {
      const { pairId, hookupId } = gear.hookups[index]!;
      const hookup = recordById(records, 'hookup', hookupId);
      const anchor = recordById(records, 'anchor', hookup.anchorId);
      const { label } = recordById(records, 'bandPair', pairId);
      return { bandPairId: pairId, hookupId, label, hookupWords: hookupWords(hookup, anchor) };
    }),
    chains: set.chainPairs.flatMap((pairs, kind) => {
      const { chainPairId } = gear.chains[kind]!;
      return pairs === 0
        ? []
        : [{ chainPairId, pairs, label: recordById(records, 'chainPair', chainPairId).label }];
    }),
  };
}
