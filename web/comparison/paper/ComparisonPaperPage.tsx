import '#web/print/paper.css';
import './comparisonPaper.css';
import { useState } from 'react';
import type { ToldComparison } from '#contract/comparison/toldComparison.ts';
import type { Paper } from '#contract/paper/paperSize.ts';
import type { Comparison } from '#contract/records/comparison.ts';
import { useClubSettings } from '#web/api/useClub.ts';
import { useToldComparison } from '#web/api/useComparison.ts';
import { localToday } from '#web/parts/localToday.ts';
import { inPages } from '#web/print/inPages.ts';
import { letterSizes } from '#web/print/letterSizes.ts';
import { usePaper } from '#web/print/PaperBar.tsx';
import { PaperPageHead } from '#web/print/PaperPageHead.tsx';
import { PlainHead } from '#web/print/PlainHead.tsx';
import { useDrawn } from '../useDrawn.ts';
import { ComparisonSheet } from './ComparisonSheet.tsx';
import { PairTable } from './PairTable.tsx';
import { pairRows } from './pairRows.ts';

/** Pairs on a further page, each on two lines where names are long. */
const mostRows = 24;

/** A comparison on paper: one page, and a further one only for pairs that find no room on it. */
export function ComparisonPaperPage({ comparison }: { comparison: Comparison }) {
  const { told, error } = useToldComparison(comparison.id);
  const [paper, setPaper] = usePaper();
  return (
    <div className="stack loose">
      <PaperPageHead
        back={{ href: `/${comparison.id}`, word: comparison.title }}
        title="Comparison on paper"
        {...{ paper, setPaper }}
        isReady={told !== undefined}
      >
        <p className="quiet">
          It names lifters and what they are drawn for: ask before it hangs where others see it. Why somebody
          was not drawn or taken out is not on it.
        </p>
        {error && <p role="alert">{error.message}</p>}
        {told === undefined && !error && (
          <p className="quiet" aria-busy="true">
            Weighing what was lifted since.
          </p>
        )}
      </PaperPageHead>
      {told && <Pages key={paper} comparison={comparison} told={told} paper={paper} />}
    </div>
  );
}

function Pages(props: { comparison: Comparison; told: ToldComparison; paper: Paper }) {
  const { comparison, told, paper } = props;
  const club = useClubSettings();
  const now = useDrawn(comparison);
  const rows = pairRows(comparison.planDocument);
  const [first, setFirst] = useState(rows.length);
  const further = first < rows.length ? inPages(rows.slice(first), mostRows) : [];
  const today = localToday(club.timeZone);
  const head = { today, clubName: club.name, isInvented: club.invented, pages: 1 + further.length };
  const { ways } = comparison.planDocument;
  return (
    <div className="papers" style={letterSizes}>
      <ComparisonSheet
        {...{ comparison, told, now, paper }}
        {...head}
        rows={rows.slice(0, first)}
        onTooFull={first > 0 ? () => setFirst(first - 1) : null}
      />
      {further.map((some, at) => (
        <section
          key={some[0]!.key}
          className={`paper comparison-paper ${paper}`}
          aria-label={`${comparison.title}, page ${at + 2}`}
        >
          <PlainHead
            {...head}
            page={at + 2}
            title={comparison.title}
            says="Who trains by which, further pairs."
          />
          <PairTable ways={ways} rows={some} now={now} />
        </section>
      ))}
    </div>
  );
}
