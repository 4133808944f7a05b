import { CsvDoor } from '#web/gear/sheets/CsvDoor.tsx';
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
      <section className="stack ruled">
        <h2>People and days as spreadsheet files</h2>
        <p>The files of bands, racks and iron stand below their own tables.</p>
        <div className="csv-doors">
          <CsvDoor kind="lifter" word="lifters" />
          <CsvDoor kind="bodyMass" word="body masses" />
          <CsvDoor kind="liftHeights" word="measured heights" />
          <CsvDoor kind="best" word="bests" />
          <CsvDoor kind="day" word="training days" />
          <CsvDoor kind="club" word="settings" />
        </div>
      </section>
    </div>
  );
}
