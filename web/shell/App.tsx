import { lazy, Suspense } from 'react';
import { Redirect, Route, Switch } from 'wouter';
import { useClubSettings } from '#web/api/useClub.ts';
import { useClubEvents } from '#web/api/useClubEvents.ts';
import { DayScreen } from '#web/day/DayScreen.tsx';
import { useFetchedAhead } from '#web/parts/useFetchedAhead.ts';
import { ViewUnits } from '#web/parts/ViewUnits.tsx';
import { ClockBehind } from './ClockBehind.tsx';
import { Foot } from './Foot.tsx';
import { Header } from './Header.tsx';
import { NotSaving } from './NotSaving.tsx';
import { ScreenError } from './ScreenError.tsx';

const places = {
  season: () => import('#web/season/SeasonScreen.tsx'),
  lifters: () => import('#web/lifters/LiftersScreen.tsx'),
  gear: () => import('#web/gear/GearScreen.tsx'),
  log: () => import('#web/log/LogScreen.tsx'),
  evidence: () => import('#web/evidence/EvidenceScreen.tsx'),
  comparison: () => import('#web/comparison/ComparisonScreen.tsx'),
};
const SeasonScreen = lazy(() => places.season().then((m) => ({ default: m.SeasonScreen })));
const LiftersScreen = lazy(() => places.lifters().then((m) => ({ default: m.LiftersScreen })));
const GearScreen = lazy(() => places.gear().then((m) => ({ default: m.GearScreen })));
const LogScreen = lazy(() => places.log().then((m) => ({ default: m.LogScreen })));
const EvidenceScreen = lazy(() => places.evidence().then((m) => ({ default: m.EvidenceScreen })));
const ComparisonScreen = lazy(() => places.comparison().then((m) => ({ default: m.ComparisonScreen })));
// The place in the address comes together with the club, not after it.
const asked = Object.entries(places).find(([place]) => location.pathname.startsWith(`/${place}`));
void asked?.[1]().catch(() => {});
const otherPlaces = () => Promise.all(Object.values(places).map((load) => load()));

/** The frame around the places. The days, which open first, come with it; the others when they are opened or a moment later. */
export function App() {
  useFetchedAhead(otherPlaces);
  const trouble = useClubEvents();
  const club = useClubSettings();
  return (
    <>
      <a className="skip" href="#main">
        To the page
      </a>
      <ViewUnits clubMass={club.massUnit} clubLength={club.lengthUnit}>
        <Header />
        <NotSaving trouble={trouble} />
        <ClockBehind />
        <main id="main" tabIndex={-1}>
          <ScreenError>
            <Suspense fallback={<p className="quiet waiting">Fetching this page.</p>}>
              <Switch>
                <Route path="/">
                  <Redirect to="/day" replace />
                </Route>
                <Route path="/day" nest>
                  <DayScreen />
                </Route>
                <Route path="/season" nest>
                  <SeasonScreen />
                </Route>
                <Route path="/lifters" nest>
                  <LiftersScreen />
                </Route>
                <Route path="/gear" nest>
                  <GearScreen />
                </Route>
                <Route path="/log" nest>
                  <LogScreen />
                </Route>
                <Route path="/evidence" nest>
                  <EvidenceScreen />
                </Route>
                <Route path="/comparison" nest>
                  <ComparisonScreen />
                </Route>
                <Route>
                  <p>There is no page here. Day, Season, Lifters, Gear, Log and Evidence are above.</p>
                </Route>
              </Switch>
            </Suspense>
          </ScreenError>
        </main>
        <Foot />
      </ViewUnits>
    </>
  );
}
