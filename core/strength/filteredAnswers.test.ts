import { expect, test } from 'vitest';
import type { StrengthPosterior } from './estimateStrength.ts';
import { filteredAnswers } from './filteredAnswers.ts';
import { normalLattice } from './lattice.ts';
import { populationPrior } from './parameters.ts';
import { lift } from './tests/alikeShapes.ts';

const parameters = populationPrior('squat').mean;
const particle = (weight: number, meanLn: number) => ({
  parameters,
  weight,
  strength: normalLattice(meanLn, 0.05),
});
const chosen = (...particles: ReturnType<typeof particle>[]) =>
  filteredAnswers({
    particles,
    sessions: [],
    lift,
    start: { meanLn: 5, sdLn: 0.1 },
  } as unknown as StrengthPosterior).map(({ strength }) => strength);

test('sixteen answers stand for all, each as often as it weighs, from the weakest to the strongest', () => {
  const [strong, weak, middle] = [particle(0.5, 5.3), particle(0.25, 5.1), particle(0.25, 5.2)];
  const answers = chosen(strong, weak, middle);
  expect(answers.map((one) => [weak, middle, strong].findIndex(({ strength }) => strength === one))).toEqual([
    ...Array<number>(4).fill(0),
    ...Array<number>(4).fill(1),
    ...Array<number>(8).fill(2),
  ]);
});

test('an answer that weighs more than half of a sixteenth is heard once, one that weighs less is not', () => {
  // 0.04 of sixteen are 0.64, 0.02 of them 0.32.
  for (const [weight, times] of [
    [0.04, 1],
    [0.02, 0],
  ] as const) {
    const [weak, strong] = [particle(weight, 5.1), particle(1 - weight, 5.3)];
    expect(chosen(strong, weak).filter((one) => one === weak.strength)).toHaveLength(times);
  }
});
