import './paper.css';
import './cards.css';
import { useState } from 'react';
import { effortKey } from '#contract/paper/effortWords.ts';
import type { Paper } from '#contract/paper/paperSize.ts';
import type { RackSheet } from '#contract/paper/RackSheetModel.ts';
import type { Day } from '#contract/records/day.ts';
import { CutMarks } from './CutMarks.tsx';
import { DayPapers } from './DayPapers.tsx';
import { LifterCard } from './LifterCard.tsx';
import { letterSizes } from './letterSizes.ts';

const quartersOnPage = 4;

/** A card for each lifter, four to a page, cut apart along the marks. */
export function CardsPage({ day }: { day: Day }) {
  return (
    <DayPapers
      day={day}
      kind="cards"
      says="A quarter of a page for each lifter, in lifting order, rack by rack; a lifter with much to read gets a second one. Cut along the thin marks."
    >
      {(sheetsOf, paper) => <Cards sheets={sheetsOf()} paper={paper} />}
    </DayPapers>
  );
}

/** As many quarters for each lifter as the words need. */
function Cards({ sheets, paper }: { sheets: readonly RackSheet[]; paper: Paper }) {
  const [breaks, setBreaks] = useState<Readonly<Record<string, readonly number[]>>>({});
  const quarters = sheets.flatMap((sheet) =>
    sheet.lifters.flatMap((lifter) => {
      const key = `${sheet.key} ${lifter.lifterId}`;
      const starts = [0, ...(breaks[key] ?? [])];
      return starts.map((from, index) => ({
        sheet,
        lifter,
        quarter: { from, to: starts[index + 1], number: index + 1, of: starts.length },
        // What stands later is measured once this quarter is settled.
        onTooFull: (at: number) =>
          setBreaks((before) => ({ ...before, [key]: [...starts.slice(1, index + 1), at] })),
      }));
    }),
  );
  const pages = Array.from({ length: Math.ceil(quarters.length / quartersOnPage) }, (_, page) =>
    quarters.slice(page * quartersOnPage, (page + 1) * quartersOnPage),
  );
  return pages.map((page, index) => (
    <section
      key={index}
      className={`paper cards ${paper}`}
      aria-label={`Cards, page ${index + 1}`}
      style={letterSizes}
    >
      <div className="cards-quarters">
        {page.map((each) => (
          <LifterCard key={`${each.sheet.key} ${each.lifter.lifterId} ${each.quarter.number}`} {...each} />
        ))}
        <CutMarks />
      </div>
      <p className="fine cards-key">{effortKey}</p>
    </section>
  ));
}
