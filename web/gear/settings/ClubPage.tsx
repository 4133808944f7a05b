import { allKinds, kindNames } from '#contract/records/allKinds.ts';
import type { Gear } from '#web/gear/state/useGear.ts';
import { CsvDoor } from '#web/gear/tables/CsvDoor.tsx';
import { ArchiveDoor } from './ArchiveDoor.tsx';
import { CalendarDoor } from './CalendarDoor.tsx';
import { ClubForm } from './ClubForm.tsx';
import { CopiesDoor } from './CopiesDoor.tsx';

/** The club's own settings, and everything it has in one file. */
export function ClubPage({ gear }: { gear: Gear }) {
  return (
    <div className="stack loose">
      <div>
        <h1>Club</h1>
        {gear.club.note && <p className="quiet">{gear.club.note}</p>}
      </div>
      <ClubForm club={gear.club} />
      <CalendarDoor club={gear.club} lifters={gear.records.lifter} />
      <ArchiveDoor club={gear.club} />
      <CopiesDoor club={gear.club} />
      <section className="stack ruled">
        <h2>Lifters and days as spreadsheet files</h2>
        <p>Bands, racks and iron have their files below their own tables.</p>
        <div className="csv-doors">
          {kindNames
            .filter((kind) => allKinds[kind].facts.filesAt === 'club')
            .map((kind) => (
              <CsvDoor key={kind} kind={kind} />
            ))}
        </div>
      </section>
    </div>
  );
}
