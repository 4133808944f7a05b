import type { WhyNoBands } from '#core/day/whyNoBands.ts';

/** Why no bands hang, and what would help. */
export function noBandsSentence(
  why: WhyNoBands,
  names: { mass(kg: number): string; bandPair(id: string): string },
): string {
  switch (why.reason) {
    case 'noWay':
      return 'No bands: this rack has no hookup for the lift that any pair of the club could hang in. Add a hookup, or a pair that fits one.';
    case 'shared':
      return 'No bands: some would suit this lifter, but others need them, or fewer changes at the rack counted for more. Set a pair by hand, or slide towards own bands for each.';
    case 'noneFits':
      return `No bands: ${kept(why)}. Another hookup, or bands of another length, would help.`;
    case 'tooStrong':
      return `No bands: the lightest pair that fits (${names.bandPair(why.pairId)}) adds ${names.mass(why.lightestKg)} at lockout, and the aim leaves room for ${names.mass(why.roomKg)}. Another hookup, or a narrower pair, would help.`;
    case 'tooWeak':
      return `No bands: all that fit would add only ${names.mass(why.strongestKg)} at lockout, and ${names.mass(why.leastKg)} is the least allowed. A wider pair, or a lower bound, would help.`;
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
    [tooMuchForAnchor, 'would pull harder than the anchor is rated for'],
    [slack, 'would hang slack'],
    [late, 'would come in too close to lockout to count towards a share of strength or a speed'],
  ] as const;
  const parts = found.flatMap(([count, words]) => (count > 0 ? [`${count} ${words}`] : []));
  return `of the ways to hang a pair here, ${parts.join(', ')}`;
}
