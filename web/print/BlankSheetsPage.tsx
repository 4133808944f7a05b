import './paper.css';
import './blank.css';
import { Link } from 'wouter';
import type { Day } from '#contract/records/day.ts';
import { BlankSheet } from './BlankSheet.tsx';
import { DayPapers } from './DayPapers.tsx';
import { PagesOfRacks } from './PagesOfRacks.tsx';

/** Sheets to write on with a pen, as they will come out of the printer. */
export function BlankSheetsPage({ day }: { day: Day }) {
  return (
    <DayPapers
      day={day}
      kind="blank"
      says={
        <>
          A line for each planned set, to write on with a pen where no screen is at hand.{' '}
          <Link href={`/${day.id}/from-paper`}>Type in what was written</Link> afterwards, in the same order.
        </>
      }
    >
      {(sheetsOf, paper) => (
        <PagesOfRacks sheetsOf={sheetsOf}>
          {(sheet, onTooFull) => <BlankSheet key={sheet.page} {...{ sheet, paper, onTooFull }} />}
        </PagesOfRacks>
      )}
    </DayPapers>
  );
}
