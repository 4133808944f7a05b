import './comparison.css';
import { Link, Route, Switch } from 'wouter';
import { useClub } from '#web/api/useClub.ts';
import { ComparisonList } from './ComparisonList.tsx';
import { ComparisonPage } from './ComparisonPage.tsx';
import { NewComparison } from './NewComparison.tsx';

/** Two ways of training compared by lot: those of the club, one that is being planned, one that was drawn. */
export function ComparisonScreen() {
  const { comparison } = useClub();
  return (
    <Switch>
      <Route path="/">
        <ComparisonList />
      </Route>
      <Route path="/new">
        <NewComparison />
      </Route>
      <Route path="/:id">
        {({ id }) => {
          const one = comparison.find((kept) => kept.id === id);
          return one ? (
            <ComparisonPage key={id} comparison={one} />
          ) : (
            <p>
              There is no such comparison; it may have been removed. <Link href="/">Comparisons</Link>
            </p>
          );
        }}
      </Route>
    </Switch>
  );
}
