import { Link, useRoute } from 'wouter';
import { useClubSettings } from '#web/api/useClub.ts';
import { Switches } from './Switches.tsx';
import { Tape } from './Tape.tsx';

/** Club name, the places, and on wide screens the switches of this device. */
export function Header() {
  const club = useClubSettings();
  return (
    <header className="shell-head">
      <div className="shell-head-line">
        <p className="shell-club">
          <strong>{club.name}</strong>
          {club.invented && <span className="mark">invented club</span>}
        </p>
        <nav className="shell-places" aria-label="Places">
          <Place to="/day">Day</Place>
          <Place to="/season">Season</Place>
          <Place to="/lifters">Lifters</Place>
          <Place to="/gear">Gear</Place>
          <Place to="/log">Log</Place>
          <Place to="/evidence">Evidence</Place>
        </nav>
        <Switches />
      </div>
      <Tape />
    </header>
  );
}

function Place({ to, children }: { to: string; children: string }) {
  const [here] = useRoute(`${to}/*?`);
  return (
    <Link href={to} aria-current={here ? 'page' : undefined}>
      {children}
    </Link>
  );
}
