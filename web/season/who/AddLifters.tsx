import { useState } from 'react';
import type { Meet } from '#contract/records/season.ts';
import { useClub } from '#web/api/useClub.ts';
import { useJoinSeason } from '#web/api/useFoundSeason.ts';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { LifterTicks } from '#web/setup/LifterTicks.tsx';
import { MeetTicks } from '../MeetTicks.tsx';
import type { SeasonView } from '../SeasonView.ts';

/** More lifters for a season that there is, all of them for the same meets. */
export function AddLifters(props: { season: SeasonView; meets: readonly Meet[]; onLeave: () => void }) {
  const { season, meets, onLeave } = props;
  const { lifter: lifters } = useClub();
  const join = useJoinSeason(season.id);
  const [lifterIds, setLifterIds] = useState<readonly string[]>([]);
  const [meetIds, setMeetIds] = useState<readonly string[]>(meets.length === 1 ? [meets[0]!.id] : []);
  const there = new Set(season.lifters.map(({ lifter }) => lifter.id));
  const wrong =
    lifterIds.length === 0
      ? 'Lifters: tick at least one.'
      : meetIds.length === 0
        ? 'Meets: tick at least one.'
        : null;
  const save = async () => {
    await join({ lifterIds: [...lifterIds], meetIds: [...meetIds] });
    onLeave();
  };
  return (
    <RecordForm
      title="Add lifters"
      onSave={save}
      onLeave={onLeave}
      leaveWord="Not now"
      saveWord="Add them"
      wrong={wrong}
    >
      <LifterTicks
        lifters={lifters.filter(
          ({ id, leftOn }) => !there.has(id) && (leftOn === null || leftOn > season.today),
        )}
        ticked={lifterIds}
        onChange={setLifterIds}
      />
      <fieldset className="season-whole stack tight season-ticks">
        <legend className="field-label">They train for</legend>
        <MeetTicks meets={meets} ticked={meetIds} onChange={setMeetIds} />
      </fieldset>
    </RecordForm>
  );
}
