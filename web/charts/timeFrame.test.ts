import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { textWidthPx } from './paint.ts';
import { type SetMark, sceneFrom, type TimeScene } from './TimeScene.ts';
import { nearestMark, placedMarks, timeFrame } from './timeFrame.ts';

const dayOn = (day: number) => new Date(Date.UTC(2024, 0, 1 + day)).toISOString().slice(0, 10);
const mark = (key: string, on: string, straightKg: number): SetMark => ({
  key,
  on,
  straightKg,
  says: 'atLeast',
  doubted: false,
  record: false,
  words: key,
});

/** Strength of 150 kg, sure to 10 kg, for so many days. */
function scene(days: number, marks: SetMark[] = []): TimeScene {
  const history = Array.from({ length: Math.ceil(days / 7) + 1 }, (_, i) => ({
    on: dayOn(Math.min(days, 7 * i)),
    median: 150,
    low80: 145,
    high80: 155,
    low95: 140,
    high95: 160,
  }));
  return { title: 'Made up', from: null, history, marks, meets: [], bodyMasses: [] };
}

test('dates under the picture never touch and never vanish, from a week to ten years, from phone to desk', () => {
  fc.assert(
    fc.property(fc.integer({ min: 7, max: 3650 }), fc.integer({ min: 300, max: 1600 }), (days, widthPx) => {
      const { dates } = timeFrame(scene(days), { widthPx, mass: 'kg' });
      expect(dates.length).toBeGreaterThan(0);
      dates.forEach(({ atPx, text }, i) => {
        const next = dates[i + 1];
        if (next === undefined) return;
        expect(atPx + textWidthPx(text, 12) / 2).toBeLessThan(next.atPx - textWidthPx(next.text, 12) / 2);
      });
    }),
  );
});

test('a set that stands for just the middle of what is believed lies on its line, in kg and in lb', () => {
  for (const mass of ['kg', 'lb'] as const) {
    const one = scene(100, [mark('on the line', dayOn(50), 150)]);
    const frame = timeFrame(one, { widthPx: 800, mass });
    const [placed] = placedMarks(one, frame, mass);
    // 1 lb is 0.45359237 kg (NIST SP 811).
    expect(placed!.y).toBeCloseTo(frame.y(mass === 'kg' ? 150 : 150 / 0.45359237), 6);
    expect(placed!.x).toBeCloseTo((frame.left + frame.right) / 2, 0);
  }
});

test('a heavier set is never drawn lower, and no set leaves the pane, however wrong it is', () => {
  const kg = fc.double({ min: 1, max: 2000, noNaN: true });
  fc.assert(
    fc.property(kg, kg, (a, b) => {
      const one = scene(100, [mark('a', dayOn(9), Math.min(a, b)), mark('b', dayOn(9), Math.max(a, b))]);
      const frame = timeFrame(one, { widthPx: 400, mass: 'kg' });
      const [low, high] = placedMarks(one, frame, 'kg');
      expect(high!.y).toBeLessThanOrEqual(low!.y + 16);
      for (const { y, beyond, mark: drawn } of [low!, high!]) {
        expect(y).toBeGreaterThanOrEqual(frame.top);
        expect(y).toBeLessThanOrEqual(frame.floor);
        if (beyond === null) expect(Math.abs(frame.y.invert(y) - drawn.straightKg)).toBeLessThan(3);
      }
    }),
  );
});

test('no two dates under the picture read the same', () => {
  fc.assert(
    fc.property(fc.integer({ min: 7, max: 3650 }), fc.integer({ min: 300, max: 1600 }), (days, widthPx) => {
      const { dates } = timeFrame(scene(days), { widthPx, mass: 'kg' });
      // Within one year a month is named once; the next year begins with its own number.
      let year = 0;
      const named = dates.map(({ text }) => `${/\d{4}$/.test(text) ? ++year : year} ${text}`);
      expect(new Set(named).size).toBe(named.length);
    }),
  );
});

test('twelve weeks are twelve weeks wide, however long ago the last point of the course was', () => {
  const { x } = timeFrame(sceneFrom(scene(700), dayOn(620)), { widthPx: 800, mass: 'kg' });
  expect(x.domain().map((date) => date.toISOString().slice(0, 10))).toEqual([dayOn(620), dayOn(700)]);
});

test('a tap means the nearest set within reach, and beyond it none', () => {
  const one = scene(100, [mark('left', dayOn(20), 150), mark('right', dayOn(80), 150)]);
  const placed = placedMarks(one, timeFrame(one, { widthPx: 800, mass: 'kg' }), 'kg');
  const [left, right] = placed;
  expect(nearestMark(placed, left!.x + 10, left!.y - 10, 28)).toBe(0);
  expect(nearestMark(placed, right!.x - 5, right!.y, 28)).toBe(1);
  expect(nearestMark(placed, (left!.x + right!.x) / 2, left!.y, 28)).toBe(-1);
});

test('twelve weeks show the sets of twelve weeks, and the line still reaches the edge', () => {
  const whole = scene(700, [mark('old', dayOn(10), 150), mark('new', dayOn(690), 150)]);
  const part = sceneFrom(whole, dayOn(700 - 84));
  expect(part.marks.map(({ key }) => key)).toEqual(['new']);
  expect(part.history[0]!.on <= dayOn(700 - 84)).toBe(true);
  expect(part.history[1]!.on >= dayOn(700 - 84)).toBe(true);
  expect(sceneFrom(whole, null)).toBe(whole);
});
