import { dateText } from '#contract/words/dateText.ts';
import { fromSi } from '#core/units/units.ts';
import type { Session } from '#reckon/log/sessionsOf.ts';
import { topSets } from '#reckon/log/topSets.ts';
import { type ValueOn, ValueTime } from '#web/charts/ValueTime.tsx';
import { MeasuredWidth } from '#web/parts/MeasuredWidth.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { meanOfSpeeds, speedText } from '#web/setup/speedWords.ts';

/** The heaviest bar of each day with a setup, the speed of it, and what the day's best set stands for, each as a small picture. */
export function SetupWeeks(props: {
  sessions: readonly Session[];
  /** In straight weight; null where no set of the day tells how much, but only at least how much. */
  standsForKg: (session: Session) => number | null;
}) {
  const { mass } = useUnits();
  const days = props.sessions.flatMap((session) => {
    const top = topSets(session.sets);
    const [first] = top;
    if (first === undefined) return [];
    const { doneOn } = session;
    return [{ doneOn, barKg: first.setup.barKg, missed: first.made === 0, top, session }];
  });
  const bars = days.map(({ doneOn, barKg, missed }) => ({
    key: doneOn,
    on: doneOn,
    value: fromSi(barKg, mass),
    missed,
  }));
  const speeds = days.flatMap(({ doneOn, top }) => pointOf(doneOn, meanOfSpeeds(top)));
  const straight = days.flatMap(({ doneOn, session }) => {
    const kg = props.standsForKg(session);
    return pointOf(doneOn, kg === null ? null : fromSi(kg, mass));
  });
  const massWords = (value: number) => `${Number(value.toFixed(1))} ${mass}`;
  return (
    <div className="lifters-weeks">
      <OverWeeks
        what={`Heaviest bar, ${mass}${days.some(({ missed }) => missed) ? '; a ring was missed' : ''}`}
        points={bars}
        spare={fromSi(2.5, mass)}
        words={massWords}
      />
      <OverWeeks what="Mean speed of that bar, m/s" points={speeds} spare={0.05} words={speedText} />
      <OverWeeks
        what={`Best set as straight weight, ${mass}`}
        points={straight}
        spare={fromSi(2.5, mass)}
        words={(value) => `${Math.round(value)} ${mass}`}
      />
    </div>
  );
}

function pointOf(on: string, value: number | null): ValueOn[] {
  return value === null ? [] : [{ key: on, on, value }];
}

/** One of the pictures; nothing where no day tells it. The newest day comes first. */
function OverWeeks(props: {
  what: string;
  points: readonly ValueOn[];
  spare: number;
  words: (value: number) => string;
}) {
  const { what, points, words } = props;
  const [newest] = points;
  const oldest = points.at(-1);
  if (newest === undefined || oldest === undefined) return null;
  return (
    <figure>
      <figcaption className="small quiet">{what}</figcaption>
      <MeasuredWidth>
        {(widthPx) => (
          <ValueTime
            label={`${what}, from ${dateText(oldest.on)} to ${dateText(newest.on)}.`}
            points={points}
            spare={props.spare}
            lastText={words(newest.value)}
            widthPx={widthPx}
          />
        )}
      </MeasuredWidth>
    </figure>
  );
}
