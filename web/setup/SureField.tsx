import { SelectField } from '#web/parts/SelectField.tsx';

/** Whether bars are made lighter until all reps are likely, and how likely. */
export function SureField(props: {
  leastChance: number | null;
  onChange: (leastChance: number | null) => void;
}) {
  return (
    <SelectField
      label="Make bars lighter until all reps are likely"
      value={sureWord(props.leastChance)}
      options={sureWords}
      onChange={(word) => props.onChange(word === 'asAimed' ? null : Number(word))}
      hint="Chance that all reps of all sets are made, by each lifter's whole log. Bars set by hand stay."
    />
  );
}

/** How sure a coach may want to be; the chance itself is kept. */
const sureWords = [
  { value: 'asAimed', word: 'No, as aimed' },
  { value: '0.8', word: 'To 80 %' },
  { value: '0.9', word: 'To 90 %' },
  { value: '0.95', word: 'To 95 %' },
] as const;
type SureWord = (typeof sureWords)[number]['value'];

/** The nearest of the choices to what is kept. */
function sureWord(leastChance: number | null): SureWord {
  if (leastChance === null) return 'asAimed';
  if (leastChance < 0.85) return '0.8';
  return leastChance < 0.925 ? '0.9' : '0.95';
}
