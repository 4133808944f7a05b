import { useMemo, useRef, useState } from 'react';
import { liftWords } from '#contract/words/liftWords.ts';
import { hasLabel } from '#reckon/evidence/ofLabel.ts';
import { useClub } from '#web/api/useClub.ts';
import { SeasonLegend } from '#web/charts/SeasonLegend.tsx';
import type { SeasonCell } from '#web/charts/SeasonRows.tsx';
import { Choice } from '#web/parts/Choice.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { useInAddress } from '#web/parts/useInAddress.ts';
import { useLabel } from '#web/parts/useLabel.ts';
import { GearAheadSection } from './GearAheadSection.tsx';
import { phasesIn } from './phasesIn.ts';
import { SeasonPicture } from './SeasonPicture.tsx';
import type { LifterSeason, SeasonView } from './SeasonView.ts';
import { seasonScene } from './seasonRows.ts';
import { seasonWideWarnings } from './seasonWideWarnings.ts';
import { useWeekInAddress } from './useWeekInAddress.ts';
import { weekNotThere } from './weekNotThere.ts';
import { WeekPanel } from './weekOnDemand.tsx';
import { weekWords } from './weekWords.ts';

/** The whole season as a picture, what is to be looked at in it, and the week that is open. `isKept`: it is one that was taken, and only looked at. */
export function SeasonPlanPart({ season, isKept = false }: { season: SeasonView; isKept?: boolean }) {
  const club = useClub();
  const [liftAsked, setLift] = useInAddress('lift', 'squat');
  const lift = liftWords.find(({ value }) => value === liftAsked)?.value ?? 'squat';
  const { label, setLabel, options } = useLabel(season.lifters.map(({ lifter }) => lifter));
  const shown = useMemo(() => {
    const isShown = ({ lifter }: LifterSeason) => label === '' || hasLabel(lifter, label);
    return { ...season, lifters: season.lifters.filter(isShown) };
  }, [season, label]);
  const scene = useMemo(() => seasonScene(shown, lift), [shown, lift]);
  const [asked, setOpen] = useWeekInAddress();
  const picture = useRef<HTMLDivElement>(null);
  // The head of a week that somebody opens takes the focus; one that the address opens does not.
  const [opened, setOpened] = useState(false);
  const row = shown.lifters.findIndex(({ lifter }) => lifter.id === asked.lifterId);
  const week = scene.mondays.indexOf(asked.monday ?? '');
  const of = shown.lifters[row];
  const open: SeasonCell | null =
    of !== undefined && week >= 0 && week < of.plan.weeks.length ? { row, week } : null;
  const openCell = (cell: SeasonCell) => {
    const one = shown.lifters[cell.row];
    const monday = scene.mondays[cell.week];
    setOpened(true);
    if (one && monday && cell.week < one.plan.weeks.length) setOpen({ lifterId: one.lifter.id, monday });
  };
  const leave = () => {
    setOpen(null);
    picture.current?.querySelector<HTMLElement>('[role=slider]')?.focus();
  };
  const notThere = weekNotThere(asked, season.lifters);
  const warnings = seasonWideWarnings(shown);
  return (
    <div className="stack loose">
      <div className="row ends base screen-only">
        <Choice label="Lift" options={liftWords} value={lift} onChange={setLift} />
        {options.length > 1 && (
          <SelectField label="Label" value={label} options={options} onChange={setLabel} />
        )}
      </div>
      {notThere !== null && <p className="stop">{notThere}</p>}
      <div ref={picture} className="stack">
        <SeasonPicture
          scene={scene}
          open={open}
          wordsOf={(cell) => weekWords(shown, shown.lifters[cell.row]!, cell.week)}
          hrefOf={(lifterId) => `/${season.id}/lifter/${lifterId}`}
          onOpen={openCell}
          onLeave={() => setOpen(null)}
        />
      </div>
      {open && of && (
        <WeekPanel
          key={`${of.lifter.id} ${asked.monday}`}
          season={season}
          isKept={isKept}
          of={of}
          at={open.week}
          byHand={club.plannedByHand.filter(({ seasonId }) => seasonId === season.id)}
          takesFocus={opened}
          onGo={(weeks) => openCell({ row, week: week + weeks })}
          onLeave={leave}
        />
      )}
      <SeasonLegend phases={phasesIn(season, shown.lifters)} />
      {warnings.length > 0 && (
        <section className="stack ruled">
          <h2>To look at</h2>
          <ul className="stack tight">
            {warnings.map(({ sentence, names }) => (
              <li key={sentence}>
                {sentence}{' '}
                <span className="quiet">
                  {names.length === shown.lifters.length ? 'Everybody.' : `${names.join(', ')}.`}
                </span>
              </li>
            ))}
          </ul>
        </section>
      )}
      <GearAheadSection />
    </div>
  );
}
