import { classAtMeet, type Meet } from '#contract/records/season.ts';
import { dateText } from '#contract/words/dateText.ts';
import { fieldIn, quantityLimits } from '#web/parts/limits.ts';
import { NumberField } from '#web/parts/NumberField.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import type { ClassDraft } from './classDrafts.ts';

const ways = [
  { value: 'unsaid', word: 'not said' },
  { value: 'upTo', word: 'up to a body mass' },
  { value: 'heaviest', word: 'the heaviest, no upper limit' },
] as const satisfies readonly { value: ClassDraft['way']; word: string }[];

const { required: _may, ...limits } = quantityLimits(fieldIn(classAtMeet.shape, 'upToKg'));

/** The class of body mass at one meet. Rule books name classes in kg, whatever the club weighs in. */
export function ClassFields(props: { meet: Meet; draft: ClassDraft; onChange: (draft: ClassDraft) => void }) {
  const { meet, draft, onChange } = props;
  const at = `${meet.title}, ${dateText(meet.date)}`;
  return (
    <>
      <SelectField
        label={`Class at ${at}`}
        value={draft.way}
        options={ways}
        onChange={(way) => onChange({ ...draft, way })}
        hint="By the federation's rules. It changes no week of the plan."
      />
      {draft.way === 'upTo' && (
        <NumberField
          label={`Up to, at ${meet.title}`}
          valueSi={draft.upToKg}
          unit="kg"
          required
          {...limits}
          onChange={(upToKg) => onChange({ ...draft, upToKg })}
        />
      )}
    </>
  );
}
