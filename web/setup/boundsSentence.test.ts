import { expect, test } from 'vitest';
import { boundsSentence } from './boundsSentence.ts';

const bounds = {
  leastBarShare: 0.4,
  leastBandShare: 0.25,
  mostBandShare: 0.45,
  mostPairs: 3,
  strengthChance: 0.75,
};

test('a share of strength is held to all bounds of the club', () => {
  const said = boundsSentence({ by: 'capability', bottomShare: 0.88, lockoutShare: 0.27 }, bounds);
  expect(said).toMatch(/40 % of the maximum.*25 % to 45 %.*3 pairs.*75 % of the time/);
});

test('an aim for less on the bar comes before the least bar, and one for bar and lockout before the bands too', () => {
  const onBar = { basis: 'bar' as const, share: 0.3 };
  expect(boundsSentence({ by: 'percent', targets: [onBar] }, bounds)).toMatch(/least 30 %.*25 % to 45 %/);
  const both = { by: 'percent' as const, targets: [onBar, { basis: 'lockout' as const, share: 0.6 }] };
  expect(boundsSentence(both, bounds)).not.toMatch(/45 %/);
  expect(boundsSentence(both, bounds)).toMatch(/3 pairs.*75 % of the time/);
});
