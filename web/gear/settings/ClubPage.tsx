import type { Gear } from '#web/gear/state/useGear.ts';
import { ArchiveDoor } from './ArchiveDoor.tsx';
import { ClubForm } from './ClubForm.tsx';

/** The club's own settings, and everything it has in one file. */
export function ClubPage({ gear }: { gear: Gear }) {
  return (
    <div className="stack loose">
      <h1>Club</h1>
      <ClubForm key={JSON.stringify(gear.club)} club={gear.club} />
      <ArchiveDoor club={gear.club} />
    </div>
  );
}
