import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import type { ChartUnits } from './ChartUnits.ts';
import { HeightPicture } from './HeightPicture.tsx';
import type { HeightScene } from './HeightScene.ts';

const kgAndCm: ChartUnits = { massUnit: 'kg', newtonPerMass: 10, lengthUnit: 'cm', metrePerLength: 0.01 };

/** 90 kg of bar and a band that pulls 200 N for each metre above the floor; the lifter holds `heldN` throughout. */
function scene(title: string, bottomM: number, lockoutM: number, heldN: number): HeightScene {
  const heights = Array.from({ length: 11 }, (_, i) => bottomM + ((lockoutM - bottomM) * i) / 10);
  return {
    title,
    bottomM,
    lockoutM,
    rack: {
      anchors: [{ xM: 0, zM: 0.05 }],
      bands: [{ label: 'wide', way: 'single', widthMm: 60, xM: 0, zM: 0.05 }],
      path: [],
      boxHeightM: 0.35,
      benchHeightM: null,
    },
    load: {
      points: heights.map((zM) => ({
        zM,
        barN: 900,
        bandN: 200 * zM,
        chainN: 0,
        totalN: 900 + 200 * zM,
        sdN: 0,
      })),
      held: heights.map((zM) => ({ zM, heldN, lowN: heldN * 0.95, highN: heldN * 1.05 })),
    },
    speed: {
      samples: heights.map((zM) => ({ zM, speedMps: 0.5 })),
      slowest: { zM: lockoutM, speedMps: 0.5 },
      made: true,
      durationS: 1,
    },
  };
}

const short = scene('Short lifter', 0.72, 1.13, 2000);
const tall = scene('Tall lifter', 1.02, 1.68, 2000);
const draw = (scenes: HeightScene[], widthPx: number) =>
  renderToStaticMarkup(<HeightPicture scenes={scenes} units={kgAndCm} widthPx={widthPx} />);

/** Heights (px) of the full bands in a drawing, from their outlines `M x y L x y ...`. */
function bandLengthsPx(svg: string): number[] {
  return [
    ...svg.matchAll(/<path d="(M[^"]*Z)" fill="url\(#[^"]*-band\)" stroke="[^"]*" stroke-width="1.5"/g),
  ].map(([, d = '']) => {
    const ys = [...d.matchAll(/[ML][-\d.]+ ([-\d.]+)/g)].map(([, y]) => Number(y));
    return Math.max(...ys) - Math.min(...ys);
  });
}

test("a taller lifter's band is drawn longer, in proportion to the true lengths", () => {
  for (const widthPx of [1200, 358]) {
    const [shortPx = 0, tallPx = 0] = bandLengthsPx(draw([short, tall], widthPx));
    expect(shortPx).toBeGreaterThan(0);
    expect(tallPx / shortPx).toBeCloseTo((1.02 - 0.05) / (0.72 - 0.05), 6);
  }
});

test('the words of the picture name both ends in the units of the view', () => {
  const [label = ''] = /aria-label="Tall[^"]*"/.exec(draw([tall], 600)) ?? [];
  // 900 N + 200 N/m x 1.02 m = 1104 N, 110 kg at 10 N each; 1236 N, 124 kg at lockout.
  expect(label).toContain('110 kg at the bottom, 102 cm above the floor (90 straight, 20 band, 0 chain)');
  expect(label).toContain('124 kg at lockout, 168 cm above the floor');
});

test('a strength line beyond the pane is cut there and says how far it runs on', () => {
  const svg = draw([scene('Strong', 0.7, 1.3, 9000)], 600);
  expect(svg).toContain('>900 kg<');
  expect(draw([scene('Weak', 0.7, 1.3, 1500)], 600)).not.toMatch(/>\d+ kg</);
});

test('no drawn coordinate leaves the picture, however narrow', () => {
  for (const widthPx of [320, 358, 700, 1400]) {
    const svg = draw([scene('Strong', 0.7, 1.3, 9000)], widthPx);
    const xs = [...svg.matchAll(/\sx="(-?[\d.]+)"/g)].map(([, x]) => Number(x));
    expect(xs.length).toBeGreaterThan(10);
    for (const x of xs) expect(x).toBeGreaterThanOrEqual(0);
    for (const x of xs) expect(x).toBeLessThanOrEqual(widthPx);
  }
});

test('a missed rep is a cross, never only a colour', () => {
  const made = scene('Missed', 0.7, 1.3, 1000);
  const missed: HeightScene = {
    ...made,
    speed: { ...made.speed!, made: false, slowest: { zM: 0.9, speedMps: 0 } },
  };
  expect(draw([missed], 600)).toContain('stops here');
  expect(draw([missed], 600)).toContain('The bar stops at 90 cm.');
});

/** Held strength that doubles and more on the way up, so that its line leaves the pane at any height. */
function growing(heldN: number): HeightScene {
  const one = scene('Growing', 0.7, 1.3, heldN);
  const held = one.load.held.map((p, i) => ({ ...p, heldN: heldN * (0.5 + i / 10) }));
  return { ...one, load: { ...one.load, held } };
}

test('no letters stand on the dotted levels, however strong the lifter and however narrow the picture', () => {
  for (const widthPx of [320, 358, 600, 900])
    for (const heldN of [900, 1000, 1050, 1100, 1150, 1200, 1300, 1500, 2000, 3000, 9000]) {
      const svg = draw([growing(heldN)], widthPx);
      const levels = [...svg.matchAll(/<path d="M[\d.]+ ([\d.]+)H[^"]*"[^>]*stroke-dasharray="1 4"/g)].map(
        ([, y]) => Number(y),
      );
      expect(levels).toHaveLength(2);
      const written = [...svg.matchAll(/<text ([^>]*)>[^<]*(?:kg|strength|m\/s)[^<]*</g)].map(([, at = '']) =>
        Number(/ y="([\d.]+)"/.exec(` ${at}`)?.[1]),
      );
      expect(written.length).toBeGreaterThan(2);
      // Letters of 12 px: about 9 px over the baseline, 3 px under it, and then some air.
      for (const y of written) for (const level of levels) expect(level < y - 10 || level > y + 7).toBe(true);
    }
});

test("the slowest speed's figure stands clear of the curve where the pane is too narrow for it", () => {
  const one = scene('Narrow', 0.7, 1.3, 3000);
  const samples = one.speed!.samples.map((p, i) => ({ ...p, speedMps: i < 4 ? i / 8 : 0.7 - (i % 7) / 20 }));
  const slowest = { zM: samples[6]!.zM, speedMps: samples[6]!.speedMps };
  const svg = draw([{ ...one, speed: { ...one.speed!, samples, slowest } }], 320);
  const y = Number(/<text x="[\d.]+" y="([\d.]+)"[^>]*>0\.40 m\/s</.exec(svg)?.[1]);
  const curve = [...svg.matchAll(/<path d="(M[^"]*)" fill="none" stroke="var\(--go[^"]*"/g)][0]?.[1] ?? '';
  const rows = [...curve.matchAll(/[ML][-\d.]+,([-\d.]+)/g)].map(([, at]) => Number(at));
  expect(rows.length).toBe(11);
  expect(y - 10).toBeGreaterThan(Math.max(...rows));
});
