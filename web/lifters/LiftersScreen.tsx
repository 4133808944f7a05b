import { Route, Switch } from 'wouter';
import { comesLater } from '#web/parts/comesLater.ts';
import { useFetchedAhead } from '#web/parts/useFetchedAhead.ts';
import { LifterList } from './LifterList.tsx';
import './lifters.css';

const pages = {
  one: () => import('./LifterPage.tsx').then((m) => m.LifterPage),
  new: () => import('./NewLifter.tsx').then((m) => m.NewLifter),
};
const LifterPage = comesLater(pages.one);
const NewLifter = comesLater(pages.new);
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
