import { useState } from 'react';
import type { KeptCopy } from '#contract/archive/keptCopy.ts';
import { copyPath } from '#web/api/useCopies.ts';
import { momentText } from '#web/parts/momentText.ts';

/** Kept copies, newest first, a line each with what can be done with it. */
export function CopyLines(props: {
  copies: readonly KeptCopy[];
  timeZone: string;
  nameOf: (copy: KeptCopy) => string;
  disabled: boolean;
  onLook: (copy: KeptCopy) => void;
  onRemove: (copy: KeptCopy) => void;
}) {
  const [all, setAll] = useState(false);
  const shown = all ? props.copies : props.copies.slice(0, firstShown);
  if (props.copies.length === 0) return <p className="quiet">No copy is kept yet.</p>;
  return (
    <div className="table-scroll copies-list">
      <table className="table" aria-label="Copies of the club">
        <thead>
          <tr>
            <th scope="col">Copy</th>
            <th scope="col" className="number wide-only">
              MB
            </th>
            <th scope="col">To do with it</th>
          </tr>
        </thead>
        <tbody>
          {shown.map((copy) => (
            <tr key={copy.name}>
              <th scope="row">
                {momentText(copy.takenAt, props.timeZone)}
                {copy.kind === 'replaced' && <span className="small quiet"> until it was replaced</span>}
              </th>
              <td className="number wide-only">{(copy.bytes / 1e6).toFixed(1)}</td>
              <td>
                <div className="row">
                  <button
                    type="button"
                    aria-label={`Look into ${props.nameOf(copy)}`}
                    disabled={props.disabled}
                    onClick={() => props.onLook(copy)}
                  >
                    Look into it
                  </button>
                  <a
                    className="button"
                    href={copyPath(copy)}
                    download
                    aria-label={`Download ${props.nameOf(copy)}`}
                  >
                    Download
                  </a>
                  <button
                    type="button"
                    aria-label={`Remove ${props.nameOf(copy)}`}
                    disabled={props.disabled}
                    onClick={() => props.onRemove(copy)}
                  >
                    Remove
                  </button>
                </div>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {shown.length < props.copies.length && (
        <button type="button" onClick={() => setAll(true)}>
          Show all {props.copies.length}
        </button>
      )}
    </div>
  );
}

/** Mostly the newest is looked for. */
const firstShown = 8;
