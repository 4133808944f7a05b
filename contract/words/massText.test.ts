import { expect, test } from 'vitest';
import { massText } from './massText.ts';

test('a force is told as the mass that weighs as much there: 980 N are 100 kg at 9.8 m/s², or 220 lb of 0.45359237 kg', () => {
  expect(massText(980, 'kg', 9.8)).toBe('100 kg');
  expect(massText(980, 'lb', 9.8)).toBe('220 lb');
});
