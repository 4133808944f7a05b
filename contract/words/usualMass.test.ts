import { describe, expect, it } from 'vitest';
import { massQuestion } from './massQuestion.ts';
import { usualBar, usualBodyMass } from './usualMass.ts';

const LB_KG = 0.45359237; // NIST SP 811 (2008), exact
const lifted = (lift: 'squat' | 'bench' | 'deadlift', barKg: number) => ({ lift, setup: { barKg } });

describe('a bar', () => {
  const record = [lifted('squat', 140), lifted('squat', 180), lifted('bench', 90)];

  it('in pounds is asked about, the next record and a light set are not', () => {
    const squat = usualBar(record, 'squat', false)!;
    expect(massQuestion(185, 'kg', squat)).toBeNull();
    expect(massQuestion(20, 'kg', squat)).toBeNull();
    const slip = massQuestion(170 / LB_KG, 'kg', squat)!;
    expect(slip.sentence).toContain('the heaviest squat on record, 180 kg');
    expect(slip.offers[0]!.valueSi).toBeCloseTo(170, 9);
  });

  it('that is a best is asked about where it is far too little: kilograms typed in a field of pounds', () => {
    const squat = usualBar(record, 'squat', true)!;
    expect(massQuestion(190 * LB_KG, 'lb', squat)).toBeNull();
    const slip = massQuestion(150 * LB_KG, 'lb', squat)!;
    expect(slip.offers[0]!.valueSi).toBeCloseTo(150, 9);
  });

  it('of a lift without a record is held against all others, more loosely; of somebody without any against nothing', () => {
    const deadlift = usualBar(record, 'deadlift', true)!;
    expect(massQuestion(300, 'kg', deadlift)).toBeNull();
    expect(massQuestion(60, 'kg', deadlift)).toBeNull();
    expect(massQuestion(500, 'kg', deadlift)).not.toBeNull();
    expect(usualBar([], 'squat', true)).toBeNull();
  });
});

describe('a body mass', () => {
  const weighings = [
    { takenOn: '2025-01-10', massKg: 66 },
    { takenOn: '2026-01-10', massKg: 80 },
  ];
  const ask = (massKg: number, on: string) =>
    massQuestion(massKg, 'kg', usualBodyMass(weighings, on, (date) => date)!);

  it('is held against the weighing nearest to its day', () => {
    expect(ask(82, '2026-02-01')).toBeNull();
    expect(ask(99, '2026-02-01')).toBeNull();
    expect(ask(99, '2025-02-01')).not.toBeNull();
    const slip = ask(176, '2026-02-01')!;
    expect(slip.sentence).toBe('This is 2.2 times the body mass weighed on 2026-01-10, 80 kg.');
    expect(slip.offers[0]!.valueSi).toBeCloseTo(176 * LB_KG, 9);
  });

  it('of the first weighing is held against nothing', () => {
    expect(usualBodyMass([], '2026-01-01', (date) => date)).toBeNull();
  });
});
