import './gear.css';
import { Link, Route, Switch, useRoute } from 'wouter';
import { BandPage } from './bands/BandPage.tsx';
import { NewBand } from './bands/NewBand.tsx';
import { gearPlaces } from './gearPlaces.ts';
import { RackPage } from './racks/RackPage.tsx';
import { ChosenPlace } from './state/Chosen.tsx';
import { type Gear, useGear } from './state/useGear.ts';

/** All the iron and rubber of the club, and the club's own settings. */
export function GearScreen() {
  const gear = useGear();
  return (
    <ChosenPlace>
      <div className="gear">
        <nav className="gear-places" aria-label="Gear">
          {gearPlaces.map(({ path, below, word }) => (
            <Place key={path} to={path} also={below ?? path}>
              {word}
            </Place>
          ))}
        </nav>
        <div className="gear-page">
          <Pages gear={gear} />
        </div>
      </div>
    </ChosenPlace>
  );
}

function Pages({ gear }: { gear: Gear }) {
  return (
    <Switch>
      {gearPlaces.map(({ path, Page }) => (
        <Route key={path} path={path}>
          <Page gear={gear} />
        </Route>
      ))}
      <Route path="/bands/new">
        <NewBand />
      </Route>
      <Route path="/bands/:id">
        {({ id }) => {
          const state = gear.pairs.find(({ pair }) => pair.id === id);
          return state ? (
            <BandPage key={id} gear={gear} state={state} />
          ) : (
            <Gone word="pair of bands" to="/" all="All bands" />
          );
        }}
      </Route>
      <Route path="/racks/:id">
        {({ id }) => {
          const rack = gear.records.rack.find((each) => each.id === id);
          return rack ? (
            <RackPage key={id} gear={gear} rack={rack} />
          ) : (
            <Gone word="rack" to="/racks" all="All racks" />
          );
        }}
      </Route>
      <Route>
        <Gone word="page" to="/" all="All bands" />
      </Route>
    </Switch>
  );
}

function Place({ to, also, children }: { to: string; also: string; children: string }) {
  const [here] = useRoute(to);
  const [within] = useRoute(also);
  return (
    <Link href={to} aria-current={here || within ? 'page' : undefined}>
      {children}
    </Link>
  );
}

function Gone({ word, to, all }: { word: string; to: string; all: string }) {
  return (
    <section className="stack">
      <h1>This {word} is not here</h1>
      <p>It was removed, or the address is mistyped.</p>
      <Link href={to}>{all}</Link>
    </section>
  );
}
