import { useMemo } from 'react';
import { setupKey } from '#contract/log/setupKey.ts';
import { liftWord } from '#contract/words/liftWords.ts';
import { lastSessions, type Session, sessionsOf } from '#reckon/log/sessionsOf.ts';
import { useClub } from '#web/api/useClub.ts';
import { SelectField } from '#web/parts/SelectField.tsx';
import { useInAddress } from '#web/parts/useInAddress.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import type { InPart } from '../LifterView.ts';
import { setupNames } from '../setupNames.ts';
import { SetupToday } from './SetupToday.tsx';
import { SetupWeeks } from './SetupWeeks.tsx';
import { WeeksTable } from './WeeksTable.tsx';

/** One exact setup of this lifter over the weeks: its bars, its speeds, what they stand for. A set of it stands in the address. */
export function WeeksPart({ id, sets, hasSets, estimates }: InPart) {
  const club = useClub();
  const units = useUnits();
  const [setId, setSetId] = useInAddress('set');
  const sessions = useMemo(() => sessionsOf(sets), [sets]);
  const setups = useMemo(() => lastSessions(sessions), [sessions]);
  // A set that was struck since still says which setup was meant.
  const asked = sets.find((set) => set.id === setId);
  const askedKey = asked && setupKey(asked);
  const shown = setups.find(({ key }) => key === askedKey) ?? setups[0];
  const names = setupNames(
    club,
    setups.map((session) => session.sets[0]!),
    units,
  );
  const example = shown?.sets[0];
  const ofSetup = sessions.filter(({ key }) => key === shown?.key);
  const estimate = estimates.find(({ lift }) => lift === example?.lift);
  const observed = useMemo(
    () => new Map(estimate?.observations.map((one) => [one.setId, one] as const)),
    [estimate],
  );
  /** What the best set of a day says of strength: how much, sooner than at least how much; a missed one tells neither. */
  const standsFor = (session: Session) => {
    const told = session.sets
      .flatMap((set) => observed.get(set.id) ?? [])
      .toSorted((a, b) => b.straightKg - a.straightKg);
    return told.find(({ says }) => says === 'near') ?? told.find(({ says }) => says === 'atLeast');
  };
  const nearKg = (session: Session) => {
    const told = standsFor(session);
    return told?.says === 'near' ? told.straightKg : null;
  };
  return (
    <section id={id} className="stack ruled">
      <h2>This setup over the weeks</h2>
      {shown === undefined || example === undefined ? (
        <p>{hasSets ? 'Nothing is logged for this lifter yet.' : 'Fetching the log.'}</p>
      ) : (
        <>
          <div className="lifters-choose">
            <SelectField
              label="Setup"
              value={shown.key}
              options={setups.map(({ key, sets: [first] }, i) => ({
                value: key,
                word: `${first ? liftWord(first.lift) : ''}, ${names[i]}`,
              }))}
              onChange={(key) => setSetId(setups.find((one) => one.key === key)?.sets[0]?.id ?? '')}
            />
          </div>
          {estimate && <SetupToday estimate={estimate} example={example} />}
          <SetupWeeks sessions={ofSetup} standsForKg={nearKg} />
          <WeeksTable sessions={ofSetup} estimate={estimate ?? null} standsFor={standsFor} />
          <p className="small quiet">
            Bars and speeds compare within this setup only; what a set is worth in straight weight compares
            across all setups. Ranges hold the truth 80 % of the time.
          </p>
        </>
      )}
    </section>
  );
}
