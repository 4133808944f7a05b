import '#web/print/paper.css';
import './seasonPaper.css';
import { useClubSettings } from '#web/api/useClub.ts';
import { SeasonPatterns } from '#web/charts/SeasonPatterns.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { useInAddress } from '#web/parts/useInAddress.ts';
import { inPages } from '#web/print/inPages.ts';
import { letterSizes } from '#web/print/letterSizes.ts';
import { usePaper } from '#web/print/PaperBar.tsx';
import { PaperPageHead } from '#web/print/PaperPageHead.tsx';
import type { LifterSeason, SeasonView } from '../SeasonView.ts';
import { ClubPage } from './ClubPage.tsx';
import { LifterPage } from './LifterPage.tsx';
import { NearPage } from './NearPage.tsx';

/** Most lifters on a page of the club, and most weeks on a page of one lifter: letters would become too small. */
const mostRows = 40;
const mostWeeks = { a4: 32, letter: 28 };
/** Weeks that the caution on a class takes the room of. */
const cautionWeeks = 4;

/** A season on paper: a page for the club, or for a lifter the season and the near days with their bars, or those of each lifter. */
export function SeasonPaperPage({ season }: { season: SeasonView }) {
  const club = useClubSettings();
  const [paper, setPaper] = usePaper();
  const [named, setAsked] = useInAddress('lifter');
  const isSomebody = named === 'each' || season.lifters.some(({ lifter }) => lifter.id === named);
  const asked = isSomebody ? named : '';
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
              { value: '', word: 'the club, one page' },
              { value: 'each', word: 'each lifter, two pages each' },
              ...season.lifters.map(({ lifter }) => ({ value: lifter.id, word: lifter.name })),
            ]}
            onChange={setAsked}
          />
        }
      />
      <SeasonPatterns />
      <div className="papers" style={letterSizes}>
        {asked === ''
          ? inPages(season.lifters, mostRows).map((lifters, page, all) => (
              <ClubPage
                key={page}
                {...head}
                season={{ ...season, lifters }}
                page={page + 1}
                pages={all.length}
              />
            ))
          : printed.flatMap((of) => [
              ...inPages(of.plan.weeks, mostWeeks[paper] - classWeeks(of)).map((weeks, page, all) => (
                <LifterPage
                  key={`${of.lifter.id} ${page}`}
                  {...head}
                  of={of}
                  weeks={weeks}
                  page={page + 1}
                  pages={all.length}
                />
              )),
              <NearPage key={`${of.lifter.id} near`} {...head} of={of} />,
            ])}
      </div>
    </div>
  );
}

/** Weeks that the lines of classes take the room of. */
function classWeeks({ classes }: LifterSeason): number {
  return classes.length === 0 ? 0 : classes.length + cautionWeeks;
}
