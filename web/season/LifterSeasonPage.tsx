import { useMemo } from 'react';
import { Link, useLocation } from 'wouter';
import { massRange } from '#contract/season/farSentence.ts';
import { warningSentences } from '#contract/season/warningSentences.ts';
import { shortDate } from '#contract/words/dayWords.ts';
import { liftWord, liftWords } from '#contract/words/liftWords.ts';
import { referenceMaximum } from '#reckon/day/referenceMaximum.ts';
import { assembledOrNull } from '#reckon/gear/assembledOrNull.ts';
import { endsOfSet } from '#reckon/log/endsOfSet.ts';
import { workOfSet } from '#reckon/season/workOfSet.ts';
import { useClub } from '#web/api/useClub.ts';
import { useLifterSets } from '#web/api/useLifterSets.ts';
import { useStrengthAhead } from '#web/api/useWeeksAhead.ts';
import { SeasonLegend } from '#web/charts/SeasonLegend.tsx';
import { SeasonStrengthLegend } from '#web/charts/SeasonStrength.tsx';
import { strengthSpan } from '#web/charts/SeasonStrengthScene.ts';
import { Choice } from '#web/parts/Choice.tsx';
import { DataTable } from '#web/parts/DataTable.tsx';
import { useInAddress } from '#web/parts/useInAddress.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { ClassLines } from '#web/setup/ClassLines.tsx';
import { classesInSeason } from './classesInSeason.ts';
import { doneByWeek } from './doneByWeek.ts';
import { lifterWeekColumns } from './lifterWeekColumns.tsx';
import { phasesIn } from './phasesIn.ts';
import { SeasonPicture } from './SeasonPicture.tsx';
import type { LifterSeason, SeasonView } from './SeasonView.ts';
import { seasonScene } from './seasonRows.ts';
import { maximumText, strengthInSeason, weeksOfScene } from './strengthInSeason.ts';
import { useKnownStrength } from './useKnownStrength.ts';
import { weekWords } from './weekWords.ts';

/** One lifter's season, a week a row: what is planned, beside it what was done. */
export function LifterSeasonPage({ season, of }: { season: SeasonView; of: LifterSeason }) {
  const club = useClub();
  const [, go] = useLocation();
  const { plan, lifter } = of;
  const [liftAsked, setLift] = useInAddress('lift', 'squat');
  const lift = liftWords.find(({ value }) => value === liftAsked)?.value ?? 'squat';
  const { data: sets } = useLifterSets(lifter.id);
  const done = useMemo(() => {
    const referenceKg = assembledOrNull(() => referenceMaximum(club, lifter.id, lift, season.today).kg);
    const first = plan.weeks[0]?.monday ?? season.today;
    const ofSeason = (sets ?? []).filter(({ doneOn }) => doneOn >= first);
    return doneByWeek(ofSeason, lift, {
      referenceKg,
      lockoutKg: (set) => endsOfSet(club, set)?.lockoutKg ?? null,
      workJ: (set) => workOfSet(club, set)?.workJ ?? null,
    });
  }, [club, sets, plan, lifter.id, lift, season.today]);
  const { mass } = useUnits();
  const known = useKnownStrength(season, of, lift);
  const ahead = useStrengthAhead(season.id, lifter.id);
  const scene = useMemo(() => seasonScene({ ...season, lifters: [of] }, lift), [season, of, lift]);
  const strength = useMemo(
    () => strengthInSeason(known, weeksOfScene(scene, { season, of, lift, mass })),
    [known, scene, season, of, lift, mass],
  );
  const openWeek = (monday: string | undefined) => {
    if (monday) go(`/${season.id}?${new URLSearchParams({ week: monday, lifter: lifter.id, lift })}`);
  };
  return (
    <div className="stack loose">
      <div className="row ends base">
        <h1>{lifter.name}</h1>
        <p className="row screen-only">
          <Link href={`/${season.id}`}>{season.title}, everybody</Link>
          <Link href={`/${season.id}/paper?lifter=${lifter.id}`}>On paper</Link>
          <Link href={`~/lifters/${lifter.id}/meet`}>What the meet may bring, by the log</Link>
        </p>
      </div>
      <ClassLines ahead={classesInSeason(club, season, of)} />
      <div className="screen-only">
        <Choice label="Lift" options={liftWords} value={lift} onChange={setLift} />
      </div>
      <SeasonPicture
        scene={scene}
        strength={strength}
        open={null}
        wordsOf={({ week }) => weekWords(season, of, week)}
        hrefOf={() => `~/lifters/${lifter.id}`}
        onOpen={({ week }) => openWeek(scene.mondays[week])}
        onLeave={() => go(`/${season.id}`)}
      />
      <SeasonLegend phases={phasesIn(season, [of])} />
      {strengthSpan(strength) !== null && <SeasonStrengthLegend />}
      {ahead.isPending && <p className="quiet">Working out the maximum from the log.</p>}
      {ahead.error && <p className="stop">The maximum could not be worked out: {ahead.error.message}</p>}
      <DataTable
        label={`Weeks of ${lifter.name}, ${liftWord(lift)}`}
        columns={lifterWeekColumns(season, of, lift, done, {
          rangeOf(monday, share) {
            const maximum = known.maxima?.find((week) => week.monday === monday);
            return maximum === undefined ? '' : massRange(maximum, share, mass);
          },
          maximumOf: (monday) => maximumText(known, monday, mass),
        })}
        rows={plan.weeks}
        keyOf={({ monday }) => monday}
        nameOf={({ monday }) => shortDate(monday)}
        onOpen={({ monday }) => openWeek(monday)}
        onLeave={() => go(`/${season.id}`)}
      />
      <p className="small quiet">
        Shares are of the maximum that percentages refer to, for done sets as it is known today. Planned:
        work-up sets included, bands as the aim asks for them. Done: every logged set of that lift that was
        made, with what bands and chains truly gave at lockout, and the work on the way up. Ranges are right
        80 times in 100, as far as can be told today. The maximum is straight weight in the lifter's own
        equipment; for past weeks it is what the whole log says now.{' '}
        <span className="with-keys">Arrows move, Enter opens a week.</span>
      </p>
      {of.warnings.length > 0 && (
        <section className="stack ruled">
          <h2>To look at</h2>
          <ul className="stack tight">
            {warningSentences(of.warnings).map(({ sentence }) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </section>
      )}
    </div>
  );
}
