import { useState } from 'react';
import { useLocation } from 'wouter';
import type { Method, PhaseOfMethod } from '#contract/records/method.ts';
import { nextVersion } from '#contract/records/nextVersion.ts';
import { usualNearWeeks } from '#contract/season/nearUntil.ts';
import { judgedMethod } from '#contract/season/readMethod.ts';
import { counted } from '#contract/words/counted.ts';
import { useClub, useClubSettings } from '#web/api/useClub.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { FigureField } from '#web/parts/FigureField.tsx';
import { localToday } from '#web/parts/localToday.ts';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { GroupFigures } from './GroupFigures.tsx';
import { PhaseFields } from './PhaseFields.tsx';
import { PhaseOrder } from './PhaseOrder.tsx';
import { MethodProblems } from './ReadMethod.tsx';

/** The phases of a method and their figures; what is wrong with the whole is told as it is typed. Saved, it is the next version. */
export function MethodForm({ method, onLeave }: { method: Method; onLeave: () => void }) {
  const { method: kept } = useClub();
  const { timeZone, nearWeeks: clubWeeks } = useClubSettings();
  const today = localToday(timeZone);
  const records = useRecords('method');
  const [, go] = useLocation();
  const [draft, setDraft] = useState(method);
  const [phaseId, setPhaseId] = useState(method.phases[0]!.id);
  const phase = draft.phases.find(({ id }) => id === phaseId)!;
  const judged = judgedMethod(draft);
  const problems = 'problems' in judged ? judged.problems : [];
  const setPhase = (change: Partial<PhaseOfMethod>) =>
    setDraft({
      ...draft,
      phases: draft.phases.map((one) => (one.id === phaseId ? { ...one, ...change } : one)),
    });
  const save = async () => {
    const isKept = kept.some(({ methodDocument: one }) => one.id === method.id);
    const version = isKept ? nextVersion(kept, method) : method.version + 1;
    const methodDocument: Method = { ...draft, version, madeOn: today };
    const { id } = await records.create({ methodDocument }, `${draft.title}, version ${version}`);
    onLeave();
    go(`/methods/${id}`);
  };
  return (
    <RecordForm
      title={`Change ${method.title}`}
      onSave={save}
      onLeave={onLeave}
      saveWord="Keep as the next version"
      wrong={problems.length === 0 ? null : 'Some figures of the method do not fit together; see below.'}
    >
      <TextField
        label="Title"
        value={draft.title}
        required
        maxLength={60}
        onChange={(title) => setDraft({ ...draft, title })}
      />
      <FigureField
        label="Heavy lifts of a week, at most"
        value={draft.limits.mostHeavyLiftsAWeek ?? 0}
        min={0}
        max={200}
        whole
        hint="At 90 % or more at lockout, all lifts together."
        onChange={(most) => setDraft({ ...draft, limits: { ...draft.limits, mostHeavyLiftsAWeek: most } })}
      />
      <FigureField
        label="Worked out to bar and bands"
        word="weeks"
        value={draft.nearWeeks ?? usualNearWeeks}
        min={0}
        max={8}
        whole
        hint={
          clubWeeks === null
            ? 'From today on. Later weeks are ranges; more weeks take longer to work out.'
            : `From today on. The club's settings say ${counted(clubWeeks, 'week')}, and that leads.`
        }
        onChange={(nearWeeks) => setDraft({ ...draft, nearWeeks })}
      />
      <SelectField
        label="Phase"
        value={phaseId}
        options={draft.phases.map(({ id, title }) => ({ value: id, word: title }))}
        onChange={setPhaseId}
      />
      <PhaseOrder
        phases={draft.phases}
        phaseId={phaseId}
        onChange={(phases, shown) => {
          setDraft({ ...draft, phases });
          setPhaseId(shown);
        }}
      />
      <PhaseFields key={phaseId} phase={phase} onChange={setPhase} />
      {phase.days.map((day, at) =>
        day.groups.map((group) => (
          <GroupFigures
            key={`${phaseId} ${day.weekday} ${group.id}`}
            group={group}
            dayTitle={day.title}
            onChange={(next) =>
              setPhase({
                days: phase.days.map((one, place) =>
                  place === at
                    ? { ...one, groups: one.groups.map((each) => (each.id === group.id ? next : each)) }
                    : one,
                ),
              })
            }
          />
        )),
      )}
      {problems.length > 0 && (
        <div className="season-whole" role="alert">
          <MethodProblems problems={problems} />
        </div>
      )}
    </RecordForm>
  );
}
