import { Fragment, useRef, useState } from 'react';
import { useLocation } from 'wouter';
import type { Method, PhaseOfMethod } from '#contract/records/method.ts';
import { nextVersion } from '#contract/records/nextVersion.ts';
import { judgedMethod } from '#contract/season/readMethod.ts';
import { useClub, useClubSettings } from '#web/api/useClub.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { localToday } from '#web/parts/localToday.ts';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { FaultLine } from './FaultLine.tsx';
import { MethodFaults, placeIn } from './methodFields.ts';
import { PhaseDays } from './PhaseDays.tsx';
import { PhaseFields } from './PhaseFields.tsx';
import { PhasePick } from './PhasePick.tsx';
import { TitleField } from './TitleField.tsx';
import { useDraft } from './useDraft.ts';
import { useInView } from './useInView.ts';
import { WholeFields } from './WholeFields.tsx';

/**
 * All that a method says, one phase and one day in view at a time; what is wrong stands beside its field and on top. Saved, it is the
 * next version, or, `isNew`, the first of a method of its own.
 */
export function MethodForm(props: { page: string; method: Method; isNew: boolean; onLeave: () => void }) {
  const { page, method, isNew, onLeave } = props;
  const { method: kept } = useClub();
  const today = localToday(useClubSettings().timeZone);
  const records = useRecords('method');
  const [, go] = useLocation();
  const place = useRef<HTMLDivElement>(null);
  const [asksToLeave, setAsksToLeave] = useState(false);
  const { draft, change, takeBack, turns } = useDraft(page, method);
  const judged = judgedMethod(draft);
  const problems = 'problems' in judged ? judged.problems : [];
  const inView = useInView(draft, problems, place);
  const { at } = inView;
  const phase = draft.phases[at]!;
  const setPhase = (next: Partial<PhaseOfMethod>) =>
    change({ ...draft, phases: draft.phases.with(at, { ...phase, ...next }) });
  const save = async () => {
    const isKept = kept.some(({ methodDocument: one }) => one.id === method.id);
    const version = isNew ? 1 : isKept ? nextVersion(kept, method) : method.version + 1;
    const methodDocument: Method = { ...draft, version, madeOn: today };
    const { id } = await records.create({ methodDocument }, `${draft.title}, version ${version}`);
    onLeave();
    go(`/methods/${id}`);
  };
  return (
    <MethodFaults value={problems}>
      <div ref={place}>
        <RecordForm
          title={isNew ? 'A method of your own' : `Change ${method.title}`}
          onSave={save}
          onLeave={takeBack === null ? onLeave : () => setAsksToLeave(true)}
          saveWord={isNew ? 'Keep as a method of your own' : 'Keep as the next version'}
          leaveWord={isNew ? 'Leave without a copy' : 'Leave unchanged'}
          wrong={
            problems.length === 0 ? null : 'Some of it does not fit together; the line on top leads to it.'
          }
        >
          <FaultLine
            problems={problems}
            onLead={inView.lead}
            takeBack={takeBack}
            leaving={asksToLeave ? { onLeave, onStay: () => setAsksToLeave(false) } : null}
          />
          {/* What a field still shows of a step that was taken back goes with it. */}
          <Fragment key={turns}>
            <TitleField title={draft.title} onChange={(title) => change({ ...draft, title })} />
            <PhasePick
              phases={draft.phases}
              at={at}
              onShow={(id) => inView.leave(() => inView.showPhase(id))}
              onChange={(phases, shown) => {
                change({ ...draft, phases });
                inView.showPhase(phases[shown]!.id);
              }}
            />
            <Fragment key={phase.id}>
              <PhaseFields at={placeIn('phases', at)} phase={phase} onChange={setPhase} />
              <PhaseDays
                at={placeIn('phases', at)}
                phase={phase}
                inView={inView}
                onChange={(days) => setPhase({ days })}
              />
            </Fragment>
            <WholeFields draft={draft} onChange={change} />
          </Fragment>
        </RecordForm>
      </div>
    </MethodFaults>
  );
}
