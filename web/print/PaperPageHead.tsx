import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { type Paper, paperWords } from '#contract/paper/paperSize.ts';
import { Choice } from '#web/parts/Choice.tsx';

/** Above a paper that is no day's, on screen alone: the way back, what it is, its size and the way to the printer. */
export function PaperPageHead(props: {
  back: { href: string; word: string };
  title: string;
  paper: Paper;
  setPaper: (paper: Paper) => void;
  /** False: there is nothing to print yet. */
  isReady: boolean;
  /** Beside the size: what else is chosen. */
  choices?: ReactNode;
  children?: ReactNode;
}) {
  const { back, paper, setPaper, isReady } = props;
  return (
    <header className="stack screen-only">
      <p className="small">
        <Link href={back.href}>{back.word}</Link>
      </p>
      <h1>{props.title}</h1>
      <div className="row base">
        <button type="button" className="strong" disabled={!isReady} onClick={() => window.print()}>
          Print
        </button>
        <Choice label="Paper" options={paperWords} value={paper} onChange={setPaper} />
        {props.choices}
      </div>
      {props.children}
    </header>
  );
}
