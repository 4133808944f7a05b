import { describe, expect, it } from 'vitest';
import { boundSentence } from './boundSentence.ts';
import { noBandsSentence } from './noBandsSentence.ts';
import { speaksForSentence } from './speaksForSentence.ts';

const names = { mass: (kg: number) => `${kg} kg`, bandPair: (id: string) => id };

describe('what a search ran into', () => {
  it('names what is pulled, what room is left and what would serve', () => {
    const why = { reason: 'tooStrong' as const, lightestKg: 160, roomKg: 30, pairId: '64-A' };
    const said = noBandsSentence(why, names);
    expect(said).toMatch(/64-A.*160 kg.*30 kg.*hookup.*narrower/);
  });

  it('counts only what keeps a pair off', () => {
    const why = { reason: 'noneFits' as const, slack: 0, stretched: 2, tooMuchForAnchor: 1 };
    const said = noBandsSentence(why, names);
    expect(said).toMatch(
      /2 would be stretched.*, 1 would pull.*\. Another hookup, or bands of another length/,
    );
    expect(said).not.toMatch(/slack|close to lockout/);
    expect(noBandsSentence({ ...why, slack: 1 }, names)).toContain('1 would hang slack');
    expect(noBandsSentence({ ...why, late: 3 }, names)).toMatch(/3 would come in too close to lockout/);
  });

  it('says that there is no way to hang bands, or that others need them', () => {
    const weak = { reason: 'tooWeak' as const, strongestKg: 12, leastKg: 20 };
    expect(noBandsSentence(weak, names)).toMatch(
      /all that fit would add only 12 kg.*20 kg is the least.*wider pair/,
    );
    expect(noBandsSentence({ reason: 'noWay' }, names)).toMatch(/no hookup/);
    expect(noBandsSentence({ reason: 'shared' }, names)).toMatch(/others need them/);
  });

  it('says a bound as the share that was wanted and the share that holds', () => {
    expect(boundSentence({ bound: 'leastBar', limit: 0.4, wanted: 0.116 })).toMatch(/12 %.*40 %/);
    expect(boundSentence({ bound: 'leastBands', limit: 0.1, wanted: 0.05 })).toMatch(
      /5 %.*10 % is the least/,
    );
    expect(boundSentence({ bound: 'mostBands', limit: 0.1, wanted: 0.15 })).toMatch(/15 %.*10 % is the most/);
    expect(boundSentence({ bound: 'mostPairs', limit: 2, wanted: 3 })).toMatch(/3 pairs.*2 /);
  });

  it('says what speaks for a runner-up in one sentence', () => {
    const found = [
      { code: 'fewerPieces' as const, pieces: 1 },
      { code: 'heavierBar' as const, kg: 5 },
      { code: 'nearlyAsGood' as const, misfitMore: 0.012 },
    ];
    expect(speaksForSentence(found, names.mass)).toMatch(/^One piece fewer.*5 kg more.*1\.2 points.*\.$/);
    const nearer = [{ code: 'nearerToAim' as const, misfitLess: 0.01 }];
    expect(speaksForSentence(nearer, names.mass)).toBe('1.0 point closer to the aim.');
    const others = [
      { code: 'fewerPieces' as const, pieces: 2 },
      { code: 'allMeasured' as const },
      { code: 'samePairs' as const },
      { code: 'lighterBar' as const, kg: 5 },
    ];
    expect(speaksForSentence(others, names.mass)).toMatch(
      /^2 pieces fewer.*, all of its bands are measured, the same pairs, .*, 5 kg less on the bar\.$/,
    );
    const tied = [{ code: 'nearlyAsGood' as const, misfitMore: 0.0002 }];
    expect(speaksForSentence(tied, names.mass)).not.toMatch(/further/);
  });
});
