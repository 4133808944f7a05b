import { Known } from './Known.tsx';
import { useUnits } from './ViewUnits.tsx';

/** Explains the marks once, on the first screen that uses them. */
export function KnownLegend() {
  const { length } = useUnits();
  const [height, range] = length === 'cm' ? ['102', '98 to 106'] : ['40', '38.5 to 41.5'];
  return (
    <p className="legend small quiet">
      <Known value={height} unit={length} known="measured" /> was measured.{' '}
      <Known value={height} unit={length} known="estimated" interval={range} /> is estimated; 95 % of the time
      the true height lies in the range. <Known value={height} unit={length} known="assumed" /> rests on an
      assumption.{' '}
      <span className="screen-only">Tap a number to read where it is from and how to measure it.</span>
    </p>
  );
}
