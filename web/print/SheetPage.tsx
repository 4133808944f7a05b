import './paper.css';
import './sheet.css';
import { useState } from 'react';
import type { Paper } from '#contract/paper/paperSize.ts';
import type { Day } from '#contract/records/day.ts';
import { DayPapers } from './DayPapers.tsx';
import { RackSheetPage } from './RackSheetPage.tsx';
import type { SheetsOf } from './useRackSheets.ts';

/** The sheets for the wall, as they will come out of the printer. */
export function SheetPage({ day }: { day: Day }) {
  const words = {
    title: 'Rack sheets',
    says: 'A page for each rack, to hang where everybody sees it, and a further one where letters would become too small. The large weight is bar, discs and collars together.',
    other: { href: `/${day.id}/cards`, word: "Lifters' cards" },
  };
  return (
    <DayPapers day={day} words={words}>
      {(sheetsOf, paper) => <Sheets {...{ sheetsOf, paper }} />}
    </DayPapers>
  );
}

/** As many pages for each rack as its lifters need. */
function Sheets({ sheetsOf, paper }: { sheetsOf: SheetsOf; paper: Paper }) {
  const [parts, setParts] = useState<Readonly<Record<string, number>>>({});
  return sheetsOf((key) => parts[key] ?? 1).map((sheet) => (
    <RackSheetPage
      key={sheet.page}
      sheet={sheet}
      paper={paper}
      onTooFull={() => setParts((before) => ({ ...before, [sheet.key]: sheet.parts + 1 }))}
    />
  ));
}
