import { Route, Switch } from 'wouter';
import { LifterList } from './LifterList.tsx';
import { LifterPage } from './LifterPage.tsx';
import { NewLifter } from './NewLifter.tsx';
import './lifters.css';

/** Lifters: who is in the club, and one page for each. */
export function LiftersScreen() {
  return (
    <Switch>
      <Route path="/">
        <LifterList />
      </Route>
      <Route path="/new">
        <NewLifter />
      </Route>
      <Route path="/:id">{({ id }) => <LifterPage key={id} lifterId={id} />}</Route>
    </Switch>
  );
}
