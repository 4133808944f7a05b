import { renderToStaticMarkup } from 'react-dom/server';
import { expect, test } from 'vitest';
import type { TrackReading, TrackRep } from '#core/track/Track.ts';
import { TrackDrawing } from './TrackDrawing.tsx';

const units = { massUnit: 'kg', newtonPerMass: 9.80665, lengthUnit: 'cm', metrePerLength: 0.01 };
const rep = (startS: number, made: boolean): TrackRep => ({
  made,
  startS,
  endS: startS + 1,
  bottomM: 0.9,
  topM: made ? 1.5 : 1.1,
  meanSpeedMps: 0.6,
  peakSpeedMps: 0.9,
  stoppedAtS: made ? null : 1 / 3,
  swayM: null,
  gapS: 0.02,
});
const reading = (reps: TrackRep[], lastsS: number): TrackReading => ({
  rateHz: 50,
  cutoffHz: 6,
  startS: 0,
  zM: Float64Array.from({ length: 50 * lastsS }, (_, i) => 1.2 + 0.3 * Math.cos((Math.PI * i) / 50)),
  speedMps: new Float64Array(50 * lastsS),
  range: { bottomM: 0.9, lockoutM: 1.5 },
  reps,
});
const draw = (one: TrackReading, widthPx: number) =>
  renderToStaticMarkup(<TrackDrawing reading={one} units={units} widthPx={widthPx} />);

test('each made rep carries its mean speed, a miss a cross and the word', () => {
  const svg = draw(reading([rep(1, true), rep(5, true), rep(9, false)], 12), 800);
  expect(svg.match(/>0\.60</g)).toHaveLength(2);
  expect(svg).toContain('>missed<');
  expect(svg).toContain('rep 3 missed');
  expect(svg).toContain('range 60 cm');
});

test('speeds that would stand on each other are left out, never cut; the spoken summary has them all', () => {
  const crowd = Array.from({ length: 20 }, (_, i) => rep(1 + 2 * i, true));
  const svg = draw(reading(crowd, 45), 320);
  const places = [...svg.matchAll(/<text x="([\d.]+)"[^>]*>0\.60</g)].map(([, x]) => Number(x));
  expect(places.length).toBeGreaterThan(3);
  expect(places.length).toBeLessThan(20);
  places.slice(1).forEach((x, i) => expect(x - places[i]!).toBeGreaterThan(25));
  expect(svg).toContain('rep 20 0.60 m/s');
});
