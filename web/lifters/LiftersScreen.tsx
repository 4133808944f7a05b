import { lazy } from 'react';
import { Route, Switch } from 'wouter';
import { useFetchedAhead } from '#web/parts/useFetchedAhead.ts';
import { LifterList } from './LifterList.tsx';
import './lifters.css';

const pages = {
  one: () => import('./LifterPage.tsx'),
  new: () => import('./NewLifter.tsx'),
};
const LifterPage = lazy(() => pages.one().then((m) => ({ default: m.LifterPage })));
const NewLifter = lazy(() => pages.new().then((m) => ({ default: m.NewLifter })));
const allPages = () => Promise.all([pages.one(), pages.new()]);

/** Lifters: who is in the club, and one page for each; both come in files of their own. */
export function LiftersScreen() {
  useFetchedAhead(allPages);
  return (
    <Switch>
      <Route path="/">
        <LifterList />
      </Route>
      <Route path="/new">
        <NewLifter />
      </Route>
      <Route path="/:id/:part?">
        {({ id, part }) => <LifterPage key={id} lifterId={id} partId={part ?? 'today'} />}
      </Route>
    </Switch>
  );
}
