import type { Meet } from '#contract/records/season.ts';
import { dateText } from '#contract/words/dateText.ts';
import { CheckField } from '#web/parts/CheckField.tsx';

/** Meets to tick, each with its day. */
export function MeetTicks(props: {
  meets: readonly Meet[];
  ticked: readonly string[];
  onChange: (ids: string[]) => void;
}) {
  const { meets, ticked, onChange } = props;
  return meets.map(({ id, title, date }) => (
    <CheckField
      key={id}
      label={`${title}, ${dateText(date)}`}
      checked={ticked.includes(id)}
      onChange={(isIn) => onChange(isIn ? [...ticked, id] : ticked.filter((one) => one !== id))}
    />
  ));
}
