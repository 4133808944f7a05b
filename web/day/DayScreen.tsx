import './allocation.css';
import './day.css';
import { Link, Route, Switch } from 'wouter';
import { useClub } from '#web/api/useClub.ts';
import { CardsPage } from '#web/print/CardsPage.tsx';
import { SheetPage } from '#web/print/SheetPage.tsx';
import { DayList } from './DayList.tsx';
import { DayPage } from './DayPage.tsx';
import { NewDay } from './NewDay.tsx';

/** Day: the list, one day with its loads, and its papers. */
export function DayScreen() {
  const { day: days } = useClub();
  const withDay = (id: string, show: (day: (typeof days)[number]) => React.ReactNode) => {
    const day = days.find((candidate) => candidate.id === id);
    return day ? show(day) : <NoSuchDay />;
  };
  return (
    <Switch>
      <Route path="/">
        <DayList />
      </Route>
      <Route path="/new">
        <NewDay />
      </Route>
      <Route path="/:id">{({ id }) => withDay(id, (day) => <DayPage key={day.id} kept={day} />)}</Route>
      <Route path="/:id/sheet">{({ id }) => withDay(id, (day) => <SheetPage day={day} />)}</Route>
      <Route path="/:id/cards">{({ id }) => withDay(id, (day) => <CardsPage day={day} />)}</Route>
    </Switch>
  );
}

function NoSuchDay() {
  return (
    <div className="stack">
      <h1>This day is not here</h1>
      <p>It may have been removed. Every training day of the club is in the list.</p>
      <p>
        <Link href="/">To the list of days</Link>
      </p>
    </div>
  );
}
