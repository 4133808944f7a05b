import { describe, expect, it } from 'vitest';
import type { WearFinding } from '#core/band/wear.ts';
import { wearSentence, wearWord } from './wearSentence.ts';

const date = (text: string) => `<${text}>`;

function drift(share: number): WearFinding {
  return { why: 'drift', share, allowed: 0.05, fromDate: '2026-01-02', toDate: '2026-11-25' };
}

describe('why a band wants a look', () => {
  it('says softer for a band that pulls less and harder for one that pulls more', () => {
    expect(wearSentence(drift(-0.12), date)).toBe(
      'Pulls 12 % less than on <2026-01-02>; more than 5 % counts as drift.',
    );
    expect(wearSentence(drift(0.12), date)).toContain('12 % more');
    expect(wearWord(drift(-0.12))).toBe('softer by 12 %');
    expect(wearWord(drift(0.12))).toBe('harder by 12 %');
  });

  it('names the value and what is allowed, in one sentence', () => {
    const findings: WearFinding[] = [
      { why: 'age', days: 214, allowed: 180 },
      { why: 'cycles', cycles: 7140, allowed: 5000 },
      { why: 'overstretched', stretch: 2.91, allowed: 2.5 },
      {
        why: 'fallingForce',
        restLengthM: 1,
        direction: 'loading',
        shorter: { lengthM: 1.5, forceN: 200 },
        longer: { lengthM: 2, forceN: 150 },
      },
    ];
    const said = findings.map((finding) => wearSentence(finding, date));
    expect(said[0]).toMatch(/214.*180/);
    expect(said[1]).toMatch(/7140.*5000/);
    expect(said[2]).toMatch(/2\.91.*2\.5/);
    // 150 N are a quarter less than 200 N.
    expect(said[3]).toMatch(/25 % less.*2\.00.*1\.50.* while lengthening/);
    const back = { ...findings[3]!, direction: 'unloading' } as WearFinding;
    expect(wearSentence(back, date)).toMatch(/ while shortening/);
    for (const sentence of said) expect(sentence).toMatch(/^[A-Z][^]*\.$/);
    expect(findings.map(wearWord)).toEqual([
      '214 days old',
      '7140 reps',
      'stretched 2.91 times',
      'force falls',
    ]);
    expect(wearSentence({ why: 'neverMeasured' }, date)).toMatch(/^Never measured: .*scale\.$/);
    expect(wearWord({ why: 'neverMeasured' })).toBe('not measured');
  });
});
