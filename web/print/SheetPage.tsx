import './paper.css';
import './sheet.css';
import { useState } from 'react';
import type { Paper } from '#contract/paper/paperSize.ts';
import type { RackSheet } from '#contract/paper/RackSheetModel.ts';
import type { Day } from '#contract/records/day.ts';
import { NothingToPrint } from './NothingToPrint.tsx';
import { PaperBar, usePaper } from './PaperBar.tsx';
import { RackSheetPage } from './RackSheetPage.tsx';
import { useLetters } from './useLetters.ts';
import { useRackSheets } from './useRackSheets.ts';

/** The sheets for the wall, as they will come out of the printer. */
export function SheetPage({ day }: { day: Day }) {
  const [paper, setPaper] = usePaper();
  const letters = useLetters();
  const sheetsOf = useRackSheets(day);
  if (sheetsOf === undefined) return <p className="quiet">Fetching what was worked out.</p>;
  if (sheetsOf === null) return <NothingToPrint dayId={day.id} />;
  const sheets = sheetsOf();
  const overtaken = sheets.some(({ changedSince }) => changedSince);
  return (
    <div className="stack loose">
      <PaperBar
        title="Rack sheets"
        says="A page for each rack, to hang where everybody sees it, and a further one where letters would become too small. The large weight is bar, discs and collars together."
        dayId={day.id}
        other={{ href: `/${day.id}/cards`, word: "Lifters' cards" }}
        {...{ paper, setPaper, overtaken }}
      />
      {/* Other paper, letters or words are measured from the beginning: fewer pages may do. */}
      <Sheets key={`${paper} ${letters} ${JSON.stringify(sheets)}`} {...{ paper, sheetsOf, overtaken }} />
    </div>
  );
}

/** As many pages for each rack as its lifters need. */
function Sheets(props: {
  paper: Paper;
  overtaken: boolean;
  sheetsOf: (partsOf: (key: string) => number) => RackSheet[];
}) {
  const [parts, setParts] = useState<Readonly<Record<string, number>>>({});
  return (
    <div className={props.overtaken ? 'papers overtaken' : 'papers'}>
      {props
        .sheetsOf((key) => parts[key] ?? 1)
        .map((sheet) => (
          <RackSheetPage
            key={sheet.page}
            sheet={sheet}
            paper={props.paper}
            onTooFull={() => setParts((before) => ({ ...before, [sheet.key]: sheet.parts + 1 }))}
          />
        ))}
    </div>
  );
}
