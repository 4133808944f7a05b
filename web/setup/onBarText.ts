import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Setup } from '#contract/records/lift.ts';

/** What gear that the club no longer has was called, by its id. */
export type FormerLabels = Readonly<Record<string, string>>;

/** Bands and chains of a setup in words: "13-A and 29-B (doubled, low), 2 pairs of Long 13s". Empty for straight weight. */
export function onBarText(
  setup: Pick<Setup, 'bands' | 'chains'>,
  club: ClubRecords,
  former: FormerLabels = {},
): string {
  const hookups = [...new Set(setup.bands.map((band) => band.hookupId))];
  const bands = hookups.map((hookupId) => {
    const pairs = setup.bands
      .filter((band) => band.hookupId === hookupId)
      .map(
        ({ bandPairId: id }) =>
          club.bandPair.find((pair) => pair.id === id)?.label ?? former[id] ?? 'a pair no longer kept',
      );
    const way =
      club.hookup.find((hookup) => hookup.id === hookupId)?.label ??
      former[hookupId] ??
      'hookup no longer kept';
    return `${pairs.join(' and ')} (${way.toLowerCase()})`;
  });
  const chains = setup.chains.map(({ chainPairId: id, pairs }) => {
    const label =
      club.chainPair.find((chain) => chain.id === id)?.label ?? former[id] ?? 'chains no longer kept';
    return `${pairs === 1 ? 'a pair' : `${pairs} pairs`} of ${label}`;
  });
  return [...bands, ...chains].join(', ');
}
