import './allocation.css';
import './day.css';
import './group.css';
import './newDay.css';
import './placeDetail.css';
import './here/here.css';
import './log/log.css';
import './fromPaper/fromPaper.css';
import { lazy } from 'react';
import { Link, Route, Switch } from 'wouter';
import { useClub } from '#web/api/useClub.ts';
import { useFetchedAhead } from '#web/parts/useFetchedAhead.ts';
import { DayList } from './DayList.tsx';
import { DayPage } from './DayPage.tsx';
import { allPanels } from './onDemand.tsx';

const pages = {
  new: () => import('./NewDay.tsx'),
  sheet: () => import('#web/print/SheetPage.tsx'),
  cards: () => import('#web/print/CardsPage.tsx'),
  fromPaper: () => import('./fromPaper/FromPaper.tsx'),
  blank: () => import('#web/print/BlankSheetsPage.tsx'),
};
const NewDay = lazy(() => pages.new().then((m) => ({ default: m.NewDay })));
const SheetPage = lazy(() => pages.sheet().then((m) => ({ default: m.SheetPage })));
const CardsPage = lazy(() => pages.cards().then((m) => ({ default: m.CardsPage })));
const BlankSheetsPage = lazy(() => pages.blank().then((m) => ({ default: m.BlankSheetsPage })));
const FromPaper = lazy(() => pages.fromPaper().then((m) => ({ default: m.FromPaper })));
const allPages = () => Promise.all([allPanels(), ...Object.values(pages).map((load) => load())]);

/** Day: the list, one day with its loads, its papers, and what was written on them. List and day, which open first, come with the frame. */
export function DayScreen() {
  useFetchedAhead(allPages);
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
      <Route path="/:id/blank">{({ id }) => withDay(id, (day) => <BlankSheetsPage day={day} />)}</Route>
      <Route path="/:id/from-paper">{({ id }) => withDay(id, (day) => <FromPaper day={day} />)}</Route>
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
