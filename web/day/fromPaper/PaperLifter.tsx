import { useState } from 'react';
import type { LifterLine } from '#contract/paper/RackSheetModel.ts';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { PaperLine } from './PaperLine.tsx';
import type { SetOnPaper } from './setsOnPaper.ts';
import { setsWord } from './useSaving.ts';
import { asPrinted, type WrittenSet } from './writtenSet.ts';

/** One lifter's lines, and what puts those that were done on record. */
export function PaperLifter(props: {
  line: LifterLine;
  sets: readonly SetOnPaper[];
  writtenOf: (key: string) => WrittenSet | undefined;
  busy: boolean;
  onChange: (key: string, written: WrittenSet) => void;
  onSave: (button: HTMLElement) => void;
}) {
  const { line, sets, writtenOf, onChange } = props;
  const { mass } = useUnits();
  // Which sets were left or confirmed: what is wrong with them is said.
  const [told, setTold] = useState<readonly string[]>([]);
  const open = sets.filter(({ logged }) => logged === null);
  const marked = open.filter(({ key }) => writtenOf(key)?.done);
  const left = open.filter(({ key, number }) => number !== null && !writtenOf(key)?.done);
  return (
    <section className="paper-lifter" aria-label={line.name}>
      <h3>
        <span className="order">{line.order}</span> {line.name} <span className="quiet">{line.start}</span>
      </h3>
      <table className="table paper-sets" aria-label={`Sets of ${line.name}`}>
        <thead>
          <tr>
            <th scope="col">planned</th>
            <th scope="col">bar, {mass}</th>
            <th scope="col">reps</th>
            <th scope="col">m/s</th>
            <th scope="col">remark</th>
            <th scope="col">done</th>
          </tr>
        </thead>
        <tbody>
          {sets.map((set) => (
            <PaperLine
              key={set.key}
              name={line.name}
              set={set}
              written={writtenOf(set.key) ?? asPrinted}
              told={told.includes(set.key)}
              onChange={(written) => onChange(set.key, written)}
              onTell={(tell) =>
                setTold((now) => [...now.filter((key) => key !== set.key), ...(tell ? [set.key] : [])])
              }
            />
          ))}
        </tbody>
      </table>
      <div className="row">
        <button
          type="button"
          data-saves
          disabled={props.busy}
          onClick={(event) => {
            setTold(marked.map(({ key }) => key));
            props.onSave(event.currentTarget);
          }}
        >
          Save {setsWord(marked.length)}
          <span className="only-read"> of {line.name}</span>
        </button>
        {left.length > 0 && (
          <button
            type="button"
            className="plain"
            onClick={() => {
              for (const { key } of left) onChange(key, { ...(writtenOf(key) ?? asPrinted), done: true });
            }}
          >
            All as planned<span className="only-read"> for {line.name}</span>
          </button>
        )}
      </div>
    </section>
  );
}
