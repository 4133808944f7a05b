import { longDate } from '#contract/words/dayWords.ts';
import type { SeasonView } from '../SeasonView.ts';

/** Above each page: whose it is, by which method, when it was printed. */
export function SeasonPaperHead(props: {
  title: string;
  season: SeasonView;
  clubName: string;
  isInvented: boolean;
  page: number;
  pages: number;
}) {
  const { title, season, clubName, isInvented, page, pages } = props;
  const { method, today } = season;
  return (
    <header className="sheet-head">
      <div>
        <h1>{title}</h1>
        <p>
          {season.title}, by {method.title}, version {method.version}.
        </p>
      </div>
      <div />
      <div className="sheet-date">
        <p>
          <strong>{longDate(today)}</strong>
        </p>
        <p>
          {clubName}
          {isInvented && ' (invented)'}
        </p>
        {pages > 1 && (
          <p>
            Page {page} of {pages}
          </p>
        )}
      </div>
    </header>
  );
}
