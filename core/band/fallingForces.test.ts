import { describe, expect, it } from 'vitest';
import type { BandReading } from './BandCurve.ts';
import { fallingForces } from './fallingForces.ts';

const read = (
  direction: BandReading['direction'],
  ...pairs: [lengthM: number, forceN: number][]
): BandReading[] => pairs.map(([lengthM, forceN]) => ({ lengthM, forceN, direction }));

const fall = (newtons: number): [number, number][] => [
  [1.8, 100 + newtons],
  [1.9, 100],
];

describe('fallingForces', () => {
  it('questions a force that falls by more than both readings scatter, and names the two', () => {
    // Reading error sqrt((0.015 F)^2 + 2^2): 3.6 N at 200 N, 2.5 N at 100 N, 4.4 N for the step: a fall of 23 of these.
    expect(fallingForces(read('loading', [2, 100], [1.5, 200]))).toEqual([
      {
        direction: 'loading',
        shorter: { lengthM: 1.5, forceN: 200 },
        longer: { lengthM: 2, forceN: 100 },
      },
    ]);
  });

  it('asks for more of a fall the more steps there are to fall at', () => {
    // At 100 N each step scatters by 3.54 N; one chance in twenty lies beyond 1.645 of that, 5.8 N, a fortieth of that in
    // twenty-one steps beyond 2.82 of it, 10.0 N (tables of the normal distribution).
    const rising = Array.from({ length: 20 }, (_, i): [number, number] => [2 + i / 10, 100 + 20 * i]);
    expect(fallingForces(read('loading', ...fall(5)))).toEqual([]);
    expect(fallingForces(read('loading', ...fall(7)))).toHaveLength(1);
    expect(fallingForces(read('loading', ...fall(9), ...rising))).toEqual([]);
    expect(fallingForces(read('loading', ...fall(11.5), ...rising))).toHaveLength(1);
  });

  it('leaves alone what pulls less on its way back than on its way out', () => {
    expect(
      fallingForces([...read('loading', [1.5, 200]), ...read('unloading', [1.6, 150], [1.7, 210])]),
    ).toEqual([]);
  });
});
