import './paper.css';
import './cards.css';
import type { LifterLine, RackSheet } from '#contract/paper/RackSheetModel.ts';
import type { Day } from '#contract/records/day.ts';
import { CutMarks } from './CutMarks.tsx';
import { LifterCard } from './LifterCard.tsx';
import { NothingToPrint } from './NothingToPrint.tsx';
import { PaperBar, usePaper } from './PaperBar.tsx';
import { useRackSheets } from './useRackSheets.ts';

const cardsOnPage = 4;

/** A card for each lifter, four to a page, cut apart along the marks. */
export function CardsPage({ day }: { day: Day }) {
  const [paper, setPaper] = usePaper();
  const sheets = useRackSheets(day);
  if (sheets === undefined) return <p className="quiet">Fetching what was worked out.</p>;
  if (sheets === null) return <NothingToPrint dayId={day.id} />;
  const overtaken = sheets.some(({ changedSince }) => changedSince);
  const cards = sheets.flatMap((sheet) => sheet.lifters.map((lifter) => ({ sheet, lifter })));
  return (
    <div className="stack loose">
      <PaperBar
        title="Lifters' cards"
        says="A quarter of a page for each lifter, in lifting order, rack by rack. Cut along the thin marks."
        dayId={day.id}
        other={{ href: `/${day.id}/sheet`, word: 'Rack sheets' }}
        {...{ paper, setPaper, overtaken }}
      />
      <div className={overtaken ? 'papers overtaken' : 'papers'}>
        {pagesOf(cards).map((page, index) => (
          <section key={index} className={`paper cards ${paper}`} aria-label={`Cards, page ${index + 1}`}>
            {page.map(({ sheet, lifter }) => (
              <LifterCard key={`${sheet.page} ${lifter.lifterId}`} {...{ sheet, lifter }} />
            ))}
            <CutMarks />
          </section>
        ))}
      </div>
    </div>
  );
}

type Card = { sheet: RackSheet; lifter: LifterLine };

function pagesOf(cards: readonly Card[]): Card[][] {
  return Array.from({ length: Math.ceil(cards.length / cardsOnPage) }, (_, page) =>
    cards.slice(page * cardsOnPage, (page + 1) * cardsOnPage),
  );
}
