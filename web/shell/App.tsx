import { lazy, Suspense } from 'react';
import { Redirect, Route, Switch } from 'wouter';
import { useClubSettings } from '#web/api/useClub.ts';
import { useClubEvents } from '#web/api/useClubEvents.ts';
import { ViewUnits } from '#web/parts/ViewUnits.tsx';
import { Caution } from './Caution.tsx';
import { Header } from './Header.tsx';
import { ScreenError } from './ScreenError.tsx';

const DayScreen = lazy(() => import('#web/day/DayScreen.tsx').then((m) => ({ default: m.DayScreen })));
const LiftersScreen = lazy(() =>
  import('#web/lifters/LiftersScreen.tsx').then((m) => ({ default: m.LiftersScreen })),
);
const GearScreen = lazy(() => import('#web/gear/GearScreen.tsx').then((m) => ({ default: m.GearScreen })));

/** The frame around the three places; each place is loaded when it is first opened. */
export function App() {
  useClubEvents();
  const club = useClubSettings();
  return (
    <>
      <a className="skip" href="#main">
        To the page
      </a>
      <Header />
      <main id="main" tabIndex={-1}>
        <ScreenError>
          <Suspense fallback={<p className="quiet waiting">Fetching this page.</p>}>
            <ViewUnits clubMass={club.massUnit} clubLength={club.lengthUnit}>
              <Switch>
                <Route path="/">
                  <Redirect to="/day" replace />
                </Route>
                <Route path="/day" nest>
                  <DayScreen />
                </Route>
                <Route path="/lifters" nest>
                  <LiftersScreen />
                </Route>
                <Route path="/gear" nest>
                  <GearScreen />
                </Route>
                <Route>
                  <p>There is no page here. Day, Lifters and Gear are above.</p>
                </Route>
              </Switch>
            </ViewUnits>
          </Suspense>
        </ScreenError>
      </main>
      <Caution />
    </>
  );
}
