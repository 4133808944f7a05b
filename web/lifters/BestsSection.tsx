import { useState } from 'react';
import type { Best } from '#contract/records/lifters.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { Choice } from '#web/parts/Choice.tsx';
import { useInAddress } from '#web/parts/useInAddress.ts';
import { BestForm } from './BestForm.tsx';
import type { LifterRecords } from './lifterRecords.ts';
import { RecordsBySetup } from './RecordsBySetup.tsx';
import { WrittenBests } from './WrittenBests.tsx';

const views = [
  { value: 'setups', word: 'by setup' },
  { value: 'written', word: 'written down' },
] as const;

/** Records by exact setup, from the log and from what was written down; and the list of the latter to change. */
export function BestsSection(props: {
  id: string;
  own: LifterRecords;
  sets: readonly LoggedSet[];
  estimates: readonly StrengthEstimate[];
  today: string;
}) {
  const { own, sets, estimates, today } = props;
  const [viewAsked, setView] = useInAddress('bests', 'setups');
  const view = views.find(({ value }) => value === viewAsked)?.value ?? 'setups';
  const [editing, setEditing] = useState<Best | 'new' | null>(null);
  return (
    <section id={props.id} className="stack ruled">
      <div className="row ends">
        <h2>Bests</h2>
        <div className="row">
          <Choice label="Bests shown" options={views} value={view} onChange={setView} />
          <button type="button" onClick={() => setEditing('new')}>
            Write down a best
          </button>
        </div>
      </div>
      {editing && (
        <BestForm
          key={editing === 'new' ? 'new' : editing.id}
          lifterId={own.lifter.id}
          best={editing === 'new' ? null : editing}
          today={today}
          onLeave={() => setEditing(null)}
        />
      )}
      {own.best.length === 0 && (view === 'written' || sets.length === 0) ? (
        <p>
          No best yet. One heavy single with everything that was on the bar is enough to work out what other
          setups ask.
        </p>
      ) : view === 'setups' ? (
        <RecordsBySetup own={own} sets={sets} estimates={estimates} />
      ) : (
        <WrittenBests bests={own.best} onOpen={setEditing} />
      )}
    </section>
  );
}
