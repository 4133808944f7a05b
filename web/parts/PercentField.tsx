import { FigureField } from './FigureField.tsx';

/** A share that is typed and shown in percent. */
export function PercentField(props: {
  label: string;
  /** Shares, 1 being all. */
  value: number;
  min: number;
  max: number;
  onChange: (share: number) => void;
  hint?: string | undefined;
  error?: string | null | undefined;
  id?: string | undefined;
}) {
  return <FigureField {...props} word="%" per={100} />;
}
