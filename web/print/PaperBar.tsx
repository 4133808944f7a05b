import { useState } from 'react';
import { Link } from 'wouter';
import { type Paper, paperWords } from '#contract/paper/paperSize.ts';
import { Choice } from '#web/parts/Choice.tsx';
import { useInAddress } from '#web/parts/useInAddress.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';

/** The paper a club most likely has in its printer, until somebody picks the other. */
export function usePaper(): [Paper, (paper: Paper) => void] {
  const { mass } = useUnits();
  const [asked, setAsked] = useInAddress('paper');
  const picked = paperWords.find(({ value }) => value === asked)?.value;
  return [picked ?? (mass === 'lb' ? 'letter' : 'a4'), setAsked];
}

/** What a kind of paper is called and for, and the way to the other kind. */
export interface PaperWords {
  title: string;
  says: string;
  other: { href: string; word: string };
}

/** Above the paper on screen: what it is, its size, and the way to the printer. Never printed. */
export function PaperBar(props: {
  dayId: string;
  words: PaperWords;
  paper: Paper;
  setPaper: (paper: Paper) => void;
  /** The day was changed after this was worked out. */
  overtaken: boolean;
}) {
  const { title, says, other } = props.words;
  const [asked, setAsked] = useState(false);
  return (
    <header className="stack screen-only paper-bar">
      <p className="small">
        <Link href={`/${props.dayId}`}>Back to the day</Link>
      </p>
      <div className="row ends base">
        <h1>{title}</h1>
        <Link href={other.href}>{other.word}</Link>
      </div>
      <div className="row">
        <button
          type="button"
          className="strong"
          onClick={() => (props.overtaken ? setAsked(true) : window.print())}
        >
          Print
        </button>
        <Choice label="Paper" options={paperWords} value={props.paper} onChange={props.setPaper} />
      </div>
      {props.overtaken && (
        <p>
          <strong>
            These loads do not stand: the plan, the gear or what is known of the lifters was changed since.
          </strong>
        </p>
      )}
      {props.overtaken && asked && (
        <div className="row" role="alert">
          <p>Work them out again first. Printed all the same, every page says so across its whole width.</p>
          <button type="button" onClick={() => window.print()}>
            Print them, marked
          </button>
        </div>
      )}
      <p className="quiet">{says}</p>
    </header>
  );
}
