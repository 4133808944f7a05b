import '#web/print/paper.css';
import './seasonPaper.css';
import { Fragment } from 'react';
import { gearWarningSentences } from '#contract/season/gearWarningSentences.ts';
import { useClubSettings } from '#web/api/useClub.ts';
import { useGearAhead } from '#web/api/useGearAhead.ts';
import { useWorkingAhead } from '#web/api/useWeeksAhead.ts';
import { SeasonPatterns } from '#web/charts/SeasonPatterns.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { useInAddress } from '#web/parts/useInAddress.ts';
import { inPages } from '#web/print/inPages.ts';
import { letterSizes } from '#web/print/letterSizes.ts';
import { usePaper } from '#web/print/PaperBar.tsx';
import { PaperPageHead } from '#web/print/PaperPageHead.tsx';
import type { SeasonView } from '../SeasonView.ts';
import { ClubPage } from './ClubPage.tsx';
import { GearPages } from './GearPages.tsx';
import { LifterPages } from './LifterPages.tsx';
import { NearPages } from './NearPages.tsx';

/** Most lifters on a page of the club: letters would become too small. */
const mostRows = 40;

/** A season on paper: a page for the club and where its gear is short, or for a lifter the season and the near days with their bars, or those of each lifter. */
export function SeasonPaperPage({ season }: { season: SeasonView }) {
  const club = useClubSettings();
  const [paper, setPaper] = usePaper();
  const [named, setAsked] = useInAddress('lifter');
  const isSomebody = named === 'each' || season.lifters.some(({ lifter }) => lifter.id === named);
  const asked = isSomebody ? named : '';
  const isWorking = useWorkingAhead();
  const gear = useGearAhead();
  const printed = season.lifters.filter(({ lifter }) => asked === 'each' || lifter.id === asked);
  const head = { season, paper, clubName: club.name, isInvented: club.invented };
  return (
    <div className="stack loose">
      <PaperPageHead
        back={{ href: `/${season.id}`, word: season.title }}
        title="Season on paper"
        {...{ paper, setPaper }}
        isReady
        choices={
          <SelectField
            label="For"
            value={asked}
            options={[
              { value: '', word: 'the club' },
              { value: 'each', word: 'each lifter' },
              ...season.lifters.map(({ lifter }) => ({ value: lifter.id, word: lifter.name })),
            ]}
            onChange={setAsked}
          />
        }
      >
        {named !== asked && <p className="stop">The address names a lifter who is not in this season.</p>}
        {isWorking && (
          <p className="quiet" aria-busy="true">
            Bars of the coming days are still being worked out. What is printed now lacks them.
          </p>
        )}
        {asked === '' && gear.warnings === undefined && (
          <p className={gear.error ? 'caution' : 'quiet'} aria-busy={!gear.error}>
            {gear.error
              ? gear.error.message
              : 'Racks and bands of every day are still being checked. What is printed now does not tell where they are short.'}
          </p>
        )}
      </PaperPageHead>
      <SeasonPatterns />
      <div className="papers" style={letterSizes}>
        {asked === '' ? (
          <>
            {inPages(season.lifters, mostRows).map((lifters, page, all) => (
              <ClubPage
                key={page}
                {...head}
                season={{ ...season, lifters }}
                page={page + 1}
                pages={all.length}
              />
            ))}
            <GearPages key={paper} {...head} sentences={gearWarningSentences(gear.warnings ?? [])} />
          </>
        ) : (
          printed.map((of) => (
            <Fragment key={`${of.lifter.id} ${paper}`}>
              <LifterPages {...head} of={of} />
              <NearPages {...head} of={of} />
            </Fragment>
          ))
        )}
      </div>
    </div>
  );
}
