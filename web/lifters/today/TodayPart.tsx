import { useMemo } from 'react';
import { sessionsOf } from '#reckon/log/sessionsOf.ts';
import { BestsSection } from '../BestsSection.tsx';
import { BodyMassSection } from '../BodyMassSection.tsx';
import { CapabilitySection } from '../CapabilitySection.tsx';
import { HeightsSection } from '../HeightsSection.tsx';
import type { InPart } from '../LifterView.ts';
import { LastSessions } from './LastSessions.tsx';
import { LastTimes } from './LastTimes.tsx';
import { TodaysMaxima } from './TodaysMaxima.tsx';

/** What a coach looks for each day; of somebody whose log is empty, what has to be written down first. */
export function TodayPart(view: InPart) {
  const { id, own, sets, hasSets, today } = view;
  const sessions = useMemo(() => sessionsOf(sets), [sets]);
  if (hasSets && sessions.length === 0)
    return (
      <div id={id} className="stack loose">
        <HeightsSection {...view} id="heights" />
        <BestsSection {...view} id="bests" />
        <BodyMassSection {...view} id="body-mass" />
        <CapabilitySection {...view} id="strength" />
      </div>
    );
  return (
    <div id={id} className="stack loose">
      <TodaysMaxima view={view} />
      {hasSets ? (
        <>
          <LastSessions lifterId={own.lifter.id} sessions={sessions} />
          <LastTimes sessions={sessions} today={today} />
        </>
      ) : (
        <p className="quiet">Fetching the log.</p>
      )}
    </div>
  );
}
