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
    expect(said).toMatch(/2 would be stretched.*1 would pull/);
    expect(said).not.toMatch(/slack|near to lockout/);
    expect(noBandsSentence({ ...why, late: 3 }, names)).toMatch(/3 come in too near to lockout/);
  });

  it('says that there is no way to hang bands, or that others need them', () => {
    expect(noBandsSentence({ reason: 'noWay' }, names)).toMatch(/no hookup/);
    expect(noBandsSentence({ reason: 'shared' }, names)).toMatch(/others need them/);
  });

  it('says a bound as the share that was wanted and the share that holds', () => {
    expect(boundSentence({ bound: 'leastBar', limit: 0.4, wanted: 0.116 })).toMatch(/12 %.*40 %/);
    expect(boundSentence({ bound: 'mostPairs', limit: 2, wanted: 3 })).toMatch(/3 pairs.*2 /);
  });

  it('says what speaks for a runner-up in one sentence', () => {
    const found = [
      { code: 'fewerPieces' as const, pieces: 1 },
      { code: 'heavierBar' as const, kg: 5 },
      { code: 'nearlyAsGood' as const, misfitMore: 0.012 },
    ];
    expect(speaksForSentence(found, names.mass)).toMatch(/^One piece less.*5 kg more.*1\.2 points.*\.$/);
    const nearer = [{ code: 'nearerToAim' as const, misfitLess: 0.01 }];
    expect(speaksForSentence(nearer, names.mass)).toBe('1.0 point nearer to the aim.');
    const tied = [{ code: 'nearlyAsGood' as const, misfitMore: 0.0002 }];
    expect(speaksForSentence(tied, names.mass)).not.toMatch(/further/);
  });
});
