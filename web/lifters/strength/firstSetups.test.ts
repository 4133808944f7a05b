import { expect, test } from 'vitest';
import { loggedSquat } from '#contract/tests/loggedSquat.ts';
import { firstSetups } from './firstSetups.ts';
import { keptSetup } from './useKeptSetups.ts';

const box = (heightM: number) => ({ with: { start: { way: 'box' as const, heightM } } });

test('what is asked for at first can be kept: nothing of a bar or a logged set clings to it', () => {
  for (const setup of firstSetups([loggedSquat('a', '2026-01-01', 100, box(0.36))]))
    expect(keptSetup.parse(setup)).toEqual(setup);
});

test('the straight lift comes first, then the setups that the log holds most of; struck sets count for nothing', () => {
  const sets = [
    loggedSquat('seldom', '2026-01-01', 100, box(0.3)),
    loggedSquat('often', '2026-01-02', 100, box(0.36)),
    loggedSquat('often again', '2026-01-03', 110, box(0.36)),
    loggedSquat('struck', '2026-01-04', 100, { ...box(0.42), struckAt: '2026-01-04T00:00:00Z' }),
    loggedSquat('straight', '2026-01-05', 150),
  ];
  const squats = firstSetups(sets).filter(({ lift }) => lift === 'squat');
  expect(squats.map(({ setup }) => setup.start.heightM)).toEqual([null, 0.36, 0.3]);
});
