import { type ReactNode, useState } from 'react';
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

/** The papers of a day, by their addresses. */
const papers = { sheet: 'Rack sheets', cards: "Lifters' cards", blank: 'Blank sheets' };
export type PaperKind = keyof typeof papers;

/** Above the paper on screen: what it is, its size, and the way to the printer. Never printed. */
export function PaperBar(props: {
  dayId: string;
  kind: PaperKind;
  says: ReactNode;
  paper: Paper;
  setPaper: (paper: Paper) => void;
  /** The day was changed after this was worked out. */
  overtaken: boolean;
}) {
  const { dayId, kind, says } = props;
  const others = (Object.keys(papers) as PaperKind[]).filter((other) => other !== kind);
  const [asked, setAsked] = useState(false);
  return (
    <header className="stack screen-only paper-bar">
      <p className="small">
        <Link href={`/${dayId}`}>Back to the day</Link>
      </p>
      <div className="row ends base">
        <h1>{papers[kind]}</h1>
        <p className="row">
          {others.map((other) => (
            <Link key={other} href={`/${dayId}/${other}`}>
              {papers[other]}
            </Link>
          ))}
        </p>
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
            These loads no longer hold: the plan, the gear or something about the lifters was changed since.
          </strong>
        </p>
      )}
      {props.overtaken && asked && (
        <div className="row" role="alert">
          <p>
            Work them out again first. If you print them anyway, every page says so across its whole width.
          </p>
          <button type="button" onClick={() => window.print()}>
            Print them, marked
          </button>
        </div>
      )}
      <p className="quiet">{says}</p>
    </header>
  );
}
