import { TextField } from '#web/parts/TextField.tsx';

/** A meet that is not kept yet, as it is typed. */
export interface MeetDraft {
  title: string;
  date: string;
}

/** Name and day of a new meet; left empty, it is none. */
export function MeetFields(props: {
  draft: MeetDraft;
  number: number;
  onChange: (draft: MeetDraft) => void;
}) {
  const { draft, number, onChange } = props;
  const begun = draft.title !== '' || draft.date !== '';
  const word = number === 1 ? 'Meet' : `Meet ${number}`;
  return (
    <div className="fields">
      <TextField
        label={`${word}, name`}
        value={draft.title}
        onChange={(title) => onChange({ ...draft, title })}
        required={begun}
        maxLength={80}
      />
      <TextField
        label={`${word}, day`}
        type="date"
        value={draft.date}
        onChange={(date) => onChange({ ...draft, date })}
        required={begun}
      />
    </div>
  );
}
