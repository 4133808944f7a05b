import { Fragment, type ReactNode } from 'react';
import type { Paper } from '#contract/paper/paperSize.ts';
import type { Day } from '#contract/records/day.ts';
import { usePrescription } from '#web/api/usePrescription.ts';
import { NothingToPrint } from './NothingToPrint.tsx';
import { PaperBar, type PaperKind, usePaper } from './PaperBar.tsx';
import { Reworded } from './Reworded.tsx';
import { useLetters } from './useLetters.ts';
import { type SheetsOf, useSheetsOf } from './useSheetsOf.ts';

/** The papers of a day under the bar that prints them; `children` lays them out, which measures as it goes. */
export function DayPapers(props: {
  day: Day;
  kind: PaperKind;
  /** What this paper is for. */
  says: ReactNode;
  children: (sheetsOf: SheetsOf, paper: Paper) => ReactNode;
}) {
  const { day, kind, says, children } = props;
  const [paper, setPaper] = usePaper();
  const letters = useLetters();
  const { data: prescription } = usePrescription(day.id);
  const sheetsOf = useSheetsOf(day, prescription);
  if (sheetsOf === undefined) return <p className="quiet">Fetching what was worked out.</p>;
  if (sheetsOf === null) return <NothingToPrint dayId={day.id} />;
  const sheets = sheetsOf();
  const overtaken = sheets.some(({ changedSince }) => changedSince);
  return (
    <div className="stack loose">
      <PaperBar dayId={day.id} {...{ kind, says, paper, setPaper, overtaken }} />
      {prescription && !overtaken && <Reworded key={prescription.number} {...{ prescription, day }} />}
      <div className={overtaken ? 'papers overtaken' : 'papers'}>
        {/* Other paper, letters or words are measured from the beginning: fewer pages may do. */}
        <Fragment key={`${paper} ${letters} ${JSON.stringify(sheets)}`}>{children(sheetsOf, paper)}</Fragment>
      </div>
    </div>
  );
}
