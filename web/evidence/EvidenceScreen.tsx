import './evidence.css';
import { Route, Switch } from 'wouter';
import { BacktestPage } from './backtest/BacktestPage.tsx';
import { EvidencePage } from './EvidencePage.tsx';

/** What the log says of the club's rules of thumb: the whole club, or one lifter beside it. */
export function EvidenceScreen() {
  return (
    <Switch>
      <Route path="/">
        <EvidencePage lifterId={null} />
      </Route>
      <Route path="/backtest">
        <BacktestPage />
      </Route>
      <Route path="/:id">{({ id }) => <EvidencePage lifterId={id} />}</Route>
    </Switch>
  );
}
