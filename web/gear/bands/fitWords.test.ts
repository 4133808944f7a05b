import { describe, expect, it } from 'vitest';
import { fitBand } from '#core/band/fitBand.ts';
import type { SideState } from '#web/gear/state/pairState.ts';
import { fitWords } from './fitWords.ts';
import type { LongestUse } from './longestUse.ts';

const REST_M = 1;

/** Readings of a loop with F = 60 (lambda - lambda^-2) N (neo-Hookean; Rivlin 1948, Phil Trans R Soc A 240:459). */
function side(lengthsM: readonly number[]): SideState {
  const readings = lengthsM.map((lengthM, index) => ({
    id: String(index),
    bandPairId: 'pair',
    side: 'a' as const,
    takenOn: '2026-11-25',
    lengthM,
    forceN: 60 * (lengthM - lengthM ** -2),
    direction: 'loading' as const,
  }));
  return {
    side: 'a',
    restLengthM: REST_M,
    everything: readings,
    readings,
    recent: readings,
    curves: fitBand({ restLengthM: REST_M, widthMm: 29, readings }),
    readToM: readings.length > 0 ? Math.max(...lengthsM) : null,
    findings: [],
    fault: null,
  };
}

const use = (lengthM: number) =>
  ({
    lengthM,
    barHeightM: 1.6,
    place: { hookup: { label: 'Doubled' }, rack: { label: 'North' } },
  }) as LongestUse;
const say = (lengthM: number) => `${Math.round(lengthM * 100)} cm`;
const words = (lengthsM: readonly number[], usedToM = 2) => fitWords(side(lengthsM), use(usedToM), 2.5, say);

describe('what is said of a fit', () => {
  it('names the width as the only source before two lengths were read', () => {
    for (const lengths of [[], [1.5]]) expect(words(lengths).why).toContain('width alone');
  });

  it('calls two lengths a straight line and asks for a third', () => {
    const { why, next } = words([1.3, 1.8]);
    expect(why).toContain('straight line');
    expect(next).toContain('third reading');
  });

  it('names the rubber law that the readings follow', () => {
    expect(words([1.2, 1.5, 1.8, 2.1]).why).toContain('Neo-Hookean');
  });

  it('asks for more weight up to the longest use', () => {
    const { next } = words([1.2, 1.4, 1.6], 2.1);
    expect(next).toContain('Longest reading 160 cm');
    expect(next).toContain('hang more weight, up to 210 cm');
  });

  it('never asks anybody to pull a band beyond what the club allows', () => {
    const { next } = words([1.2, 1.4, 1.6], 3.2);
    expect(next).toContain('up to 250 cm');
    expect(next).not.toContain('320 cm');
  });

  it('points into the widest gap once the longest use is read', () => {
    expect(words([1.2, 1.3, 2.1], 2.1).next).toContain('near 170 cm');
  });

  it('says how far the curve may be trusted', () => {
    expect(words([1.2, 1.5, 1.8, 2.1]).trust).toContain('up to 210 cm (2.10 times its rest length)');
  });
});
