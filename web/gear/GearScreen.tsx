import './gear.css';
import { Link, Route, Switch, useRoute } from 'wouter';
import { BandPage } from './bands/BandPage.tsx';
import { BandsPage } from './bands/BandsPage.tsx';
import { NewBand } from './bands/NewBand.tsx';
import { HeightPage } from './height/HeightPage.tsx';
import { RackPage } from './racks/RackPage.tsx';
import { RacksPage } from './racks/RacksPage.tsx';
import { ClubPage } from './settings/ClubPage.tsx';
import { BoxesPage } from './sheets/BoxesPage.tsx';
import { ChainsPage } from './sheets/ChainsPage.tsx';
import { IronPage } from './sheets/IronPage.tsx';
import { ChosenPlace } from './state/Chosen.tsx';
import { type Gear, useGear } from './state/useGear.ts';

/** All the iron and rubber of the club, and the club's own settings. */
export function GearScreen() {
  const gear = useGear();
  return (
    <ChosenPlace>
      <div className="gear">
        <nav className="gear-places" aria-label="Gear">
          <Place to="/" also="/bands/*">
            Bands
          </Place>
          <Place to="/height">On each rack</Place>
          <Place to="/racks" also="/racks/*">
            Racks
          </Place>
          <Place to="/iron">Bars and discs</Place>
          <Place to="/chains">Chains</Place>
          <Place to="/boxes">Boxes and mats</Place>
          <Place to="/club">Club</Place>
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
      <Route path="/">
        <BandsPage gear={gear} />
      </Route>
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
      <Route path="/height">
        <HeightPage gear={gear} />
      </Route>
      <Route path="/racks">
        <RacksPage gear={gear} />
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
      <Route path="/iron">
        <IronPage gear={gear} />
      </Route>
      <Route path="/chains">
        <ChainsPage gear={gear} />
      </Route>
      <Route path="/boxes">
        <BoxesPage gear={gear} />
      </Route>
      <Route path="/club">
        <ClubPage gear={gear} />
      </Route>
      <Route>
        <Gone word="page" to="/" all="All bands" />
      </Route>
    </Switch>
  );
}

function Place({ to, also, children }: { to: string; also?: string; children: string }) {
  const [here] = useRoute(to);
  const [within] = useRoute(also ?? to);
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
