import { useEffect, useRef } from 'react';
import type { RecordClash } from '#contract/changes/RecordClash.ts';
import type { ClubRecords, KindName, RecordOf } from '#contract/records/allKinds.ts';
import { calledBy } from '#contract/records/labels.ts';
import { recordName } from '#contract/records/recordName.ts';
import { capital } from '#contract/words/capital.ts';
import { clashWords } from '#contract/words/clashWords.ts';
import type { AskClash } from '#web/api/changeRecord.ts';

export interface Question {
  kind: KindName;
  clash: RecordClash;
  answer: (answer: Awaited<ReturnType<AskClash>>) => void;
}

/** The question itself: each field that both changed, with both values. */
export function ClashQuestion(props: Question & { club: ClubRecords | undefined }) {
  const { kind, clash, club, answer } = props;
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  const called = (id: string) => nameIn(club, id);
  const name = recordName(kind, clash.record as unknown as RecordOf<KindName>);
  return (
    <dialog ref={dialog} className="clash stack" aria-labelledby="clash-title" onCancel={() => answer(null)}>
      <h2 id="clash-title">Both of you changed this</h2>
      <p>
        {capital(clash.who?.name ?? 'somebody')} changed the {name} while you did. What only one of you
        changed is kept in any case.
      </p>
      <div className="table-scroll">
        <table className="table">
          <thead>
            <tr>
              <th scope="col">What</th>
              <th scope="col">Theirs</th>
              <th scope="col">Yours</th>
            </tr>
          </thead>
          <tbody>
            {clash.fields.map((field) => {
              const words = clashWords(field, called);
              return (
                <tr key={field.path.join('\n')}>
                  <th scope="row">{words.field}</th>
                  <td>{words.theirs}</td>
                  <td>{words.yours}</td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </div>
      <div className="row">
        <button type="button" onClick={() => answer('theirs')}>
          Keep theirs
        </button>
        <button type="button" onClick={() => answer('yours')}>
          Put mine
        </button>
        <button type="button" className="plain" onClick={() => answer(null)}>
          Back to what I typed
        </button>
      </div>
    </dialog>
  );
}

/** What an id within a record stands for: a record of the club, or a group of one of its days. */
function nameIn(club: ClubRecords | undefined, id: string): string | null {
  if (club === undefined) return null;
  for (const records of Object.values(club) as readonly RecordOf<KindName>[][]) {
    const record = records.find((one) => one.id === id);
    if (record) return calledBy(record);
  }
  const group = club.day.flatMap(({ groups }) => groups).find((one) => one.id === id);
  return group?.title ?? null;
}
