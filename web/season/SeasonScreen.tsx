import './season.css';
import { Fragment, type ReactNode } from 'react';
import { Redirect, Route, Switch } from 'wouter';
import type { Season } from '#contract/records/season.ts';
import { useClub } from '#web/api/useClub.ts';
import { comesLater } from '#web/parts/comesLater.ts';
import { useFetchedAhead } from '#web/parts/useFetchedAhead.ts';
import { Nothing } from './Nothing.tsx';
import { newestSeason } from './newestSeason.ts';
import { allParts } from './onDemand.tsx';
import { SeasonPage } from './SeasonPage.tsx';
import { SeasonStart } from './SeasonStart.tsx';

const pages = {
  new: () => import('./NewSeason.tsx').then((m) => m.NewSeason),
  methods: () => import('./method/MethodsPage.tsx').then((m) => m.MethodsPage),
  method: () => import('./method/MethodPage.tsx').then((m) => m.MethodPage),
};
const NewSeason = comesLater(pages.new);
const MethodsPage = comesLater(pages.methods);
const MethodPage = comesLater(pages.method);
const allPages = () => Promise.all([allParts(), ...Object.values(pages).map((load) => load())]);

/** Season: the newest that is planned opens first; beside it the others, a new one, and the methods. */
export function SeasonScreen() {
  useFetchedAhead(allPages);
  const club = useClub();
  const newest = newestSeason(club.season);
  const seasonOf = (id: string, show: (season: Season) => ReactNode) => {
    const season = club.season.find((one) => one.id === id);
    return season ? <Fragment key={id}>{show(season)}</Fragment> : <Nothing what="season" />;
  };
  return (
    <Switch>
      <Route path="/">{newest ? <Redirect to={`/${newest.id}`} replace /> : <SeasonStart />}</Route>
      <Route path="/new">
        <NewSeason />
      </Route>
      <Route path="/methods">
        <MethodsPage />
      </Route>
      <Route path="/methods/:value">{({ value }) => <MethodPage key={value} value={value} />}</Route>
      <Route path="/:id/lifter/:of">
        {({ id, of }) => seasonOf(id, (season) => <SeasonPage season={season} part="lifter" of={of} />)}
      </Route>
      <Route path="/:id/taken/:of">
        {({ id, of }) => seasonOf(id, (season) => <SeasonPage season={season} part="taken" of={of} />)}
      </Route>
      <Route path="/:id/:part?">
        {({ id, part }) => seasonOf(id, (season) => <SeasonPage season={season} part={part} />)}
      </Route>
      <Route>
        <Nothing what="page" />
      </Route>
    </Switch>
  );
}
