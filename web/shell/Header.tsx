import { useRef } from 'react';
import { Link, useRoute } from 'wouter';
import { useClubSettings } from '#web/api/useClub.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { Choice } from '#web/parts/Choice.tsx';
import { useToast } from '#web/parts/Toast.tsx';
import { lengthWords, massWords } from '#web/parts/ViewUnits.tsx';
import { useLight } from '#web/theme/useLight.ts';
import { Tape } from './Tape.tsx';

/** Club name, the places, and the switches that count for the whole club and this device. */
export function Header() {
  const club = useClubSettings();
  const clubs = useRecords('club');
  const say = useToast();
  const [light, setLight] = useLight();
  // Two switches in quick succession both count: the second is saved together with the first.
  const wanted = useRef<Partial<typeof club>>({});
  const save = (change: Partial<typeof club>) => {
    wanted.current = { ...wanted.current, ...change };
    clubs
      .update({ ...club, ...wanted.current })
      .catch((error: Error) => say(error.message))
      .finally(() => {
        wanted.current = {};
      });
  };
  return (
    <header className="shell-head">
      <div className="shell-head-line">
        <p className="shell-club">
          <strong>{club.name}</strong>
          {club.invented && <span className="mark">invented club</span>}
        </p>
        <nav className="shell-places" aria-label="Places">
          <Place to="/day">Day</Place>
          <Place to="/lifters">Lifters</Place>
          <Place to="/gear">Gear</Place>
          <Place to="/log">Log</Place>
          <Place to="/evidence">Evidence</Place>
        </nav>
        <div className="shell-switches">
          <Choice
            label="Mass in the whole club"
            options={massWords}
            value={club.massUnit}
            onChange={(massUnit) => save({ massUnit })}
          />
          <Choice
            label="Heights in the whole club"
            options={lengthWords}
            value={club.lengthUnit}
            onChange={(lengthUnit) => save({ lengthUnit })}
          />
          <Choice label="Light" options={lightWords} value={light} onChange={setLight} />
        </div>
      </div>
      <Tape />
    </header>
  );
}

const lightWords = [
  { value: 'auto', word: 'auto' },
  { value: 'day', word: 'day' },
  { value: 'night', word: 'night' },
] as const;

function Place({ to, children }: { to: string; children: string }) {
  const [here] = useRoute(`${to}/*?`);
  return (
    <Link href={to} aria-current={here ? 'page' : undefined}>
      {children}
    </Link>
  );
}
