import './paper.css';
import './sheet.css';
import type { Day } from '#contract/records/day.ts';
import { DayPapers } from './DayPapers.tsx';
import { PagesOfRacks } from './PagesOfRacks.tsx';
import { RackSheetPage } from './RackSheetPage.tsx';

/** The sheets for the wall, as they will come out of the printer. */
export function SheetPage({ day }: { day: Day }) {
  return (
    <DayPapers
      day={day}
      kind="sheet"
      says="A page for each rack, to hang where everybody sees it, and a further one where letters would become too small. The large weight is bar, discs and collars together."
    >
      {(sheetsOf, paper) => (
        <PagesOfRacks sheetsOf={sheetsOf}>
          {(sheet, onTooFull) => <RackSheetPage key={sheet.page} {...{ sheet, paper, onTooFull }} />}
        </PagesOfRacks>
      )}
    </DayPapers>
  );
}
