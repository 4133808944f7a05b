import './paper.css';
import './sheet.css';
import type { Day } from '#contract/records/day.ts';
import { NothingToPrint } from './NothingToPrint.tsx';
import { PaperBar, usePaper } from './PaperBar.tsx';
import { RackSheetPage } from './RackSheetPage.tsx';
import { useRackSheets } from './useRackSheets.ts';

/** The sheets for the wall, one page a rack, as they will come out of the printer. */
export function SheetPage({ day }: { day: Day }) {
  const [paper, setPaper] = usePaper();
  const sheets = useRackSheets(day);
  if (sheets === undefined) return <p className="quiet">Fetching what was worked out.</p>;
  if (sheets === null) return <NothingToPrint dayId={day.id} />;
  const overtaken = sheets.some(({ changedSince }) => changedSince);
  return (
    <div className="stack loose">
      <PaperBar
        title="Rack sheets"
        says="One page for each rack, to hang where everybody sees it. The large weight is bar, discs and collars together."
        dayId={day.id}
        other={{ href: `/${day.id}/cards`, word: "Lifters' cards" }}
        {...{ paper, setPaper, overtaken }}
      />
      <div className={overtaken ? 'papers overtaken' : 'papers'}>
        {sheets.map((sheet) => (
          <RackSheetPage key={sheet.page} {...{ sheet, paper }} />
        ))}
      </div>
    </div>
  );
}
