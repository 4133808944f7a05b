import { Suspense } from 'react';
import { Redirect, Route, Switch } from 'wouter';
import { useClubSettings } from '#web/api/useClub.ts';
import { useClubEvents } from '#web/api/useClubEvents.ts';
import { DayScreen } from '#web/day/DayScreen.tsx';
import { comesLater } from '#web/parts/comesLater.ts';
import { useFetchedAhead } from '#web/parts/useFetchedAhead.ts';
import { ViewUnits } from '#web/parts/ViewUnits.tsx';
import { ClockBehind } from './ClockBehind.tsx';
import { Foot } from './Foot.tsx';
import { Header } from './Header.tsx';
import { NotSaving } from './NotSaving.tsx';
import { ScreenError } from './ScreenError.tsx';

const places = {
  season: () => import('#web/season/SeasonScreen.tsx').then((m) => m.SeasonScreen),
  lifters: () => import('#web/lifters/LiftersScreen.tsx').then((m) => m.LiftersScreen),
  gear: () => import('#web/gear/GearScreen.tsx').then((m) => m.GearScreen),
  log: () => import('#web/log/LogScreen.tsx').then((m) => m.LogScreen),
  evidence: () => import('#web/evidence/EvidenceScreen.tsx').then((m) => m.EvidenceScreen),
  comparison: () => import('#web/comparison/ComparisonScreen.tsx').then((m) => m.ComparisonScreen),
};
const SeasonScreen = comesLater(places.season);
const LiftersScreen = comesLater(places.lifters);
const GearScreen = comesLater(places.gear);
const LogScreen = comesLater(places.log);
const EvidenceScreen = comesLater(places.evidence);
const ComparisonScreen = comesLater(places.comparison);
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
