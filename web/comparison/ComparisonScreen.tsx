import './comparison.css';
import type { ReactNode } from 'react';
import { Link, Route, Switch } from 'wouter';
import type { Comparison } from '#contract/records/comparison.ts';
import { useClub } from '#web/api/useClub.ts';
import { comesLater } from '#web/parts/comesLater.ts';
import { ComparisonList } from './ComparisonList.tsx';
import { ComparisonPage } from './ComparisonPage.tsx';
import { NewComparison } from './NewComparison.tsx';

const ComparisonPaperPage = comesLater(() =>
  import('./paper/ComparisonPaperPage.tsx').then((m) => m.ComparisonPaperPage),
);

/** Two ways of training compared by lot: those of the club, one that is being planned, one that was drawn. */
export function ComparisonScreen() {
  const { comparison } = useClub();
  const comparisonOf = (id: string, show: (one: Comparison) => ReactNode) => {
    const one = comparison.find((kept) => kept.id === id);
    return one ? show(one) : <Nothing />;
  };
  return (
    <Switch>
      <Route path="/">
        <ComparisonList />
      </Route>
      <Route path="/new">
        <NewComparison />
      </Route>
      <Route path="/:id">
        {({ id }) => comparisonOf(id, (one) => <ComparisonPage key={id} comparison={one} />)}
      </Route>
      <Route path="/:id/paper">
        {({ id }) => comparisonOf(id, (one) => <ComparisonPaperPage key={id} comparison={one} />)}
      </Route>
      <Route>
        <Nothing />
      </Route>
    </Switch>
  );
}

function Nothing() {
  return (
    <p>
      There is no such comparison; it may have been removed. <Link href="/">Comparisons</Link>
    </p>
  );
}
