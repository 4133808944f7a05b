import { Known } from './Known.tsx';

/** Explains the marks once, on the first screen that uses them. */
export function KnownLegend() {
  return (
    <p className="legend small quiet">
      <Known value="102" unit="cm" known="measured" /> measured;{' '}
      <Known value="102" unit="cm" known="estimated" interval="98 to 106" /> estimated, with the range that
      holds it 95 times in 100; <Known value="102" unit="cm" known="assumed" /> assumed: tap it to read what
      was assumed and how to measure it.
    </p>
  );
}
