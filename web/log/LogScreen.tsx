import './log.css';
import { Route, Switch } from 'wouter';
import { EntryPage } from './EntryPage.tsx';
import { ImportPage } from './import/ImportPage.tsx';
import { LogPage } from './LogPage.tsx';

/** Everything that was lifted: to read, to enter by hand, to take in from a file. */
export function LogScreen() {
  return (
    <Switch>
      <Route path="/">
        <LogPage />
      </Route>
      <Route path="/new">
        <EntryPage />
      </Route>
      <Route path="/file">
        <ImportPage />
      </Route>
      <Route>
        <p>There is no such page in the log.</p>
      </Route>
    </Switch>
  );
}
