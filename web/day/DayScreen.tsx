import './allocation.css';
import './day.css';
import './group.css';
import './newDay.css';
import './placeDetail.css';
import './here/here.css';
import './log/log.css';
import './fromPaper/fromPaper.css';
import { Link, Route, Switch } from 'wouter';
import { useClub } from '#web/api/useClub.ts';
import { comesLater } from '#web/parts/comesLater.ts';
import { useFetchedAhead } from '#web/parts/useFetchedAhead.ts';
import { DayList } from './DayList.tsx';
import { DayPage } from './DayPage.tsx';
import { allPanels } from './onDemand.tsx';

const pages = {
  new: () => import('./NewDay.tsx').then((m) => m.NewDay),
  sheet: () => import('#web/print/SheetPage.tsx').then((m) => m.SheetPage),
  cards: () => import('#web/print/CardsPage.tsx').then((m) => m.CardsPage),
  fromPaper: () => import('./fromPaper/FromPaper.tsx').then((m) => m.FromPaper),
  blank: () => import('#web/print/BlankSheetsPage.tsx').then((m) => m.BlankSheetsPage),
};
const NewDay = comesLater(pages.new);
const SheetPage = comesLater(pages.sheet);
const CardsPage = comesLater(pages.cards);
const BlankSheetsPage = comesLater(pages.blank);
const FromPaper = comesLater(pages.fromPaper);
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
