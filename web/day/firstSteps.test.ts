import { expect, test } from 'vitest';
import { firstSteps } from './firstSteps.ts';

const nothing = { bar: [], disc: [], rack: [], hookup: [], bandReading: [], box: [], lifter: [], best: [] };

test('a new club has everything to do, and iron alone is one step done', () => {
  expect(firstSteps(nothing).map(({ done }) => done)).toEqual([false, false, false, false, false]);
  const bar = { id: 'bar', label: 'Bar', massKg: 20, weighed: false, note: '' };
  const disc = {
    id: 'd',
    faceMassKg: 20,
    pairs: 2,
    weighedMassKg: null,
    diameterM: null,
    thicknessM: null,
    note: '',
  };
  expect(firstSteps({ ...nothing, bar: [bar] })[0]?.done).toBe(false);
  expect(firstSteps({ ...nothing, bar: [bar], disc: [disc] }).filter(({ done }) => done)).toHaveLength(1);
});
