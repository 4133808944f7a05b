import { fitBand } from '#core/band/fitBand.ts';

const FEW = 1_000;
const MANY = 10_000;

/** Fitting a band from many readings: ten times the readings against ten times the work. */
export async function run(): Promise<void> {
  fitMs(FEW);
  const few = fitMs(FEW);
  const many = fitMs(MANY);
  console.log(
    `${MANY} readings take ${many.toFixed(0)} ms, ${(many / few).toFixed(1)} times as long as ${FEW} (10 would grow with the readings, 100 with their square)`,
  );
}

/** A loop of 1 m, read evenly from 1.05 to 2.55 m, each reading off by up to 2 %. */
function fitMs(count: number): number {
  const readings = Array.from({ length: count }, (_, i) => {
    const lengthM = 1.05 + (1.5 * i) / count;
    const forceN = 150 * (lengthM - lengthM ** -2) * (1 + 0.02 * Math.sin(7 * i));
    return { lengthM, forceN, direction: 'loading' as const };
  });
  const started = performance.now();
  fitBand({ restLengthM: 1, readings });
  return performance.now() - started;
}
