import { expect, it } from 'vitest';
import { sledWorkJ } from './sledWork.ts';
import { weekLoad } from './weekLoad.ts';

const rest = [[], [], [], []];

it('counts lifts, their mean share and those that are heavy at lockout', () => {
  const squats = { lifts: 16, meanShare: 0.68, lockoutShare: 0.75 };
  const single = { lifts: 1, meanShare: 0.8, lockoutShare: 0.9 };
  const load = weekLoad([[squats], [single], [], ...rest]);
  expect(load).toMatchObject({ lifts: 17, heavyLifts: 1 });
  expect(load.meanShare).toBeCloseTo((16 * 0.68 + 0.8) / 17, 12);
});

it('tells how alike the days are: one day of seven the root of a seventh, all alike nothing', () => {
  // Loads x, 0, 0, 0, 0, 0, 0: mean x/7, standard deviation with n - 1: x / sqrt 7.
  const day = [{ lifts: 20, meanShare: 0.7, lockoutShare: 0.7 }];
  expect(weekLoad([day, [], [], ...rest]).monotony).toBeCloseTo(Math.sqrt(1 / 7), 12);
  expect(weekLoad(Array.from({ length: 7 }, () => day)).monotony).toBeNull();
});

it('takes a sled for friction times weight times way', () => {
  // 60 kg at 0.4 of its weight over 300 m: 0.4 x 60 x 9.80665 N x 300 m.
  expect(sledWorkJ({ massKg: 60, friction: 0.4, distanceM: 50, trips: 6 }, 9.80665)).toBeCloseTo(
    70_607.88,
    6,
  );
});
