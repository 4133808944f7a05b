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
          <Place to="/season" also="/comparison">
            Season
          </Place>
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

/** `also`: where what is reached from that place alone stands. */
function Place({ to, also = to, children }: { to: string; also?: string; children: string }) {
  const [isThere] = useRoute(`${to}/*?`);
  const [isAlso] = useRoute(`${also}/*?`);
  const here = isThere || isAlso;
  return (
    <Link href={to} aria-current={here ? 'page' : undefined}>
      {children}
    </Link>
  );
}
