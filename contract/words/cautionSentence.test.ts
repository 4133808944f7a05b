import { describe, expect, it } from 'vitest';
import { type PlanCaution, planCaution } from '#contract/explainedBar.ts';
import { type CautionNames, cautionSentence } from './cautionSentence.ts';
import { hookupWords } from './hookupWords.ts';

const names: CautionNames = {
  bandPair: () => '22-A',
  anchor: () => 'Low front pegs',
  chainPair: () => 'short',
  height: (metres) => `${Math.round(metres * 100)} cm`,
  mass: (kg) => `${kg} kg`,
  force: (newtons) => `${Math.round(newtons)} N`,
  date: (date) => date,
};
const zone = { reps: 40, mostReps: 30, zoneFrom: 0.55, zoneTo: 0.7 };
const pairId = 'p';

/** One of every sort. */
const cautions: PlanCaution[] = [
  { code: 'slackBottom', belowM: 0.84 },
  { code: 'extrapolated', pairId, stretch: 2.31 },
  { code: 'overstretched', pairId, stretch: 2.71, safeStretch: 2.5 },
  { code: 'notMeasured', pairId },
  { code: 'pairMismatch', pairId, share: 0.08, allowedShare: 0.05 },
  { code: 'oneSideMeasured', pairId },
  { code: 'anchorOverloaded', anchorId: 'a', pullN: 900, ratedLoadN: 700 },
  { code: 'anchorNotRated', anchorId: 'a', pullN: 900 },
  { code: 'bandsUnderLoad' },
  { code: 'lightened', atBottomN: 400 },
  { code: 'maximal', peakShare: 0.93 },
  { code: 'notMade', stoppedAtS: 0.3 },
  { code: 'notAllReps', set: 3, rep: 4, sets: 5 },
  { code: 'unlikely', chance: 0.62 },
  { code: 'madeLighter', fromKg: 180, chance: 0.91 },
  { code: 'outsideZone', mps: 0.92, fromMps: 0.75, toMps: 0.85, why: 'madeLighter' },
  { code: 'volume', ...zone },
  { code: 'repsInSet', ...zone, zoneTo: null },
  { code: 'minor', age: 15 },
  { code: 'heightsEstimated' },
  { code: 'heightsAssumed' },
  { code: 'strengthAssumed' },
  { code: 'strengthWide', sdLn: 0.1, chance: 0.75, belowShare: 0.06, workUp: true },
  { code: 'strengthOld', doneOn: '2024-05-01' },
  { code: 'bodyMassAssumed', massKg: 75 },
  { code: 'otherEquipment', equipment: 'wraps' },
  { code: 'notLoadable', wantedKg: 101, nearestKg: 100 },
  { code: 'barAssumed', massKg: 20 },
  { code: 'boundBinds', bound: 'leastBar', limit: 0.4, wanted: 0.12 },
  { code: 'noBands', why: { reason: 'tooStrong', lightestKg: 160, roomKg: 30, pairId } },
  { code: 'clash', sort: 'bandPair', gearId: 'p' },
];

const say = (code: PlanCaution['code']) => cautionSentence(cautions.find((one) => one.code === code)!, names);

describe('cautionSentence', () => {
  it('has one whole sentence for every sort of caution', () => {
    const sorts = planCaution.options.map((option) => option.shape.code.value);
    expect(new Set(cautions.map(({ code }) => code))).toEqual(new Set(sorts));
    for (const caution of cautions) {
      expect(cautionSentence(planCaution.parse(caution), names)).toMatch(/^[A-Z0-9].*[^.]\.$/);
    }
  });

  it('gives the number and the name that the coach has to act on', () => {
    expect(say('slackBottom')).toContain('84 cm');
    expect(say('anchorOverloaded')).toMatch(/low front pegs.*900 N.*700 N/);
    expect(say('pairMismatch')).toMatch(/22-A.*8 %.*5 %/);
    expect(say('notMade')).toContain('30 %');
  });

  it('says plainly of a bar too heavy from the start that it does not move', () => {
    for (const stoppedAtS of [0, -0.16]) {
      expect(cautionSentence({ code: 'notMade', stoppedAtS }, names)).toMatch(/does not leave the bottom/);
    }
  });

  it('defers to a qualified coach and local rules where the lifter is a minor', () => {
    expect(cautionSentence({ code: 'minor', age: 15 }, names)).toMatch(/qualified coach.*local rules/);
  });
});

describe('hookupWords', () => {
  it('says how a pair hangs', () => {
    expect(hookupWords({ way: 'doubled' }, { label: 'Low front pegs' })).toBe(
      'doubled round the low front pegs',
    );
  });
});
