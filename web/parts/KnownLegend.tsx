import { Known } from './Known.tsx';

/** Explains the marks once, on the first screen that uses them. */
export function KnownLegend() {
  return (
    <p className="legend small quiet">
      <Known value="102" unit="cm" known="measured" /> was measured.{' '}
      <Known value="102" unit="cm" known="estimated" interval="98 to 106" /> is estimated; 95 times in 100 the
      true height lies in the range. <Known value="102" unit="cm" known="assumed" /> rests on an assumption.
      Tap a number to read where it is from and how to measure it.
    </p>
  );
}
