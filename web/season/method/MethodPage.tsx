import { useState } from 'react';
import { Link } from 'wouter';
import type { Method } from '#contract/records/method.ts';
import { twinSentence } from '#contract/season/twinSentence.ts';
import { dateText } from '#contract/words/dateText.ts';
import { useClub } from '#web/api/useClub.ts';
import { SelectField } from '#web/parts/SelectField.tsx';
import { useInAddress } from '#web/parts/useInAddress.ts';
import { everyMethod, type MethodChoice } from '../methodChoices.ts';
import { Nothing } from '../Nothing.tsx';
import { MethodBeside } from './MethodBeside.tsx';
import { MethodForm } from './MethodForm.tsx';
import { openDraft, setOpenDraft } from './openDrafts.ts';
import { ownCopy } from './ownCopy.ts';
import { PhaseWeeks } from './PhaseWeeks.tsx';

/** One version of a method, by its value in the address. */
export function MethodPage({ value }: { value: string }) {
  const choice = everyMethod(useClub()).find((one) => one.value === value);
  return choice ? <Shown choice={choice} /> : <Nothing what="method" />;
}

/** Whom it suits, its phases with their weeks as rows, and beside another version what differs. */
function Shown({ choice }: { choice: MethodChoice }) {
  const { method } = choice;
  const club = useClub();
  const twin = twinSentence(club, choice.keptId);
  const choices = everyMethod(club);
  const others = choices.filter(({ value }) => value !== choice.value);
  const every = choices.map((one) => one.method);
  const [editing, setEditing] = useState<Method | null>(openDraft(choice.value)?.first ?? null);
  const leave = () => {
    setOpenDraft(choice.value, null);
    setEditing(null);
  };
  const [withAsked, setWith] = useInAddress('with');
  const other = others.find(({ value }) => value === withAsked);
  return (
    <div className="stack loose">
      <div className="row ends base">
        <h1>{choice.word}</h1>
        <p className="row screen-only">
          <Link href="/methods">All methods</Link>
          <Link href="/">Season</Link>
        </p>
      </div>
      <div className="stack tight">
        {twin !== null && <p className="caution">{twin}</p>}
        <p>{method.says}</p>
        <p>
          <strong>For whom.</strong> {method.forWhom}
        </p>
        <p className="small quiet">Made on {dateText(method.madeOn)}.</p>
      </div>
      {editing !== null ? (
        <MethodForm page={choice.value} method={editing} isNew={editing.id !== method.id} onLeave={leave} />
      ) : (
        <div className="row screen-only">
          <button type="button" className="strong" onClick={() => setEditing(method)}>
            Change it
          </button>
          <button type="button" onClick={() => setEditing(ownCopy(method, every))}>
            Copy it as your own
          </button>
          <a
            className="button"
            href={`data:application/json;charset=utf-8,${encodeURIComponent(JSON.stringify(method, null, 2))}`}
            download={`${method.id}-${method.version}.json`}
          >
            Save as a file
          </a>
        </div>
      )}
      <div className="season-beside screen-only">
        <SelectField
          label="Beside another"
          value={other?.value ?? ''}
          options={[{ value: '', word: 'none' }, ...others.map(({ value, word }) => ({ value, word }))]}
          onChange={setWith}
        />
      </div>
      {other && <MethodBeside method={method} other={other} />}
      {editing === null && method.phases.map((phase) => <PhaseWeeks key={phase.id} phase={phase} />)}
      <section className="stack ruled">
        <h2>Where its figures come from</h2>
        <ul className="stack tight">
          {method.sources.map(({ of, source }) => (
            <li key={of}>
              <strong>{of}</strong>: {source}.
            </li>
          ))}
        </ul>
      </section>
    </div>
  );
}
