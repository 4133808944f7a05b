import type { WhyNoBands } from '#core/day/whyNoBands.ts';

/** Why no bands hang, and what would serve. */
export function noBandsSentence(
  why: WhyNoBands,
  names: { mass(kg: number): string; bandPair(id: string): string },
): string {
  switch (why.reason) {
    case 'noWay':
      return 'No bands: this rack has no hookup for the lift in which a pair of the club could hang. A hookup, or a pair for it, would serve.';
    case 'shared':
      return 'No bands: some would serve this lifter, but others need them, or fewer changes at the rack count for more. A pair set by hand, or bands of their own for each, would serve.';
    case 'noneFits':
      return `No bands: ${kept(why)}. Another hookup or another length of band would serve.`;
    case 'tooStrong':
      return `No bands: the lightest pair that fits (${names.bandPair(why.pairId)}) adds ${names.mass(why.lightestKg)} at lockout, the aim leaves room for ${names.mass(why.roomKg)}. Another hookup, or a narrower pair, would serve.`;
    case 'tooWeak':
      return `No bands: all that fit add ${names.mass(why.strongestKg)} at lockout, and ${names.mass(why.leastKg)} is the least that is hung. A wider pair, or a lower bound, would serve.`;
  }
}

function kept({
  slack,
  stretched,
  tooMuchForAnchor,
  late = 0,
}: Extract<WhyNoBands, { reason: 'noneFits' }>): string {
  const found = [
    [stretched, 'would be stretched too far'],
    [tooMuchForAnchor, 'would pull harder than their anchor is rated for'],
    [slack, 'hang slack'],
    [late, 'come in too near to lockout for a share of strength or a speed to be judged by them'],
  ] as const;
  const parts = found.flatMap(([count, words]) => (count > 0 ? [`${count} ${words}`] : []));
  return `of the ways to hang a pair here ${parts.join(', ')}`;
}
