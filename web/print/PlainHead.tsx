import type { ReactNode } from 'react';
import { longDate } from '#contract/words/dayWords.ts';

/** Above a page that is no day's: what it is, of which day, whose club. */
export function PlainHead(props: {
  title: string;
  says: ReactNode;
  today: string;
  clubName: string;
  isInvented: boolean;
  page: number;
  pages: number;
}) {
  const { title, says, today, clubName, isInvented, page, pages } = props;
  return (
    <header className="sheet-head">
      <div>
        <h1>{title}</h1>
        <p>{says}</p>
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
