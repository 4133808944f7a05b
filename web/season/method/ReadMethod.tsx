import { useState } from 'react';
import { useLocation } from 'wouter';
import type { Method } from '#contract/records/method.ts';
import { nextVersion } from '#contract/records/nextVersion.ts';
import { type MethodProblem, ofWhole, readMethod } from '#contract/season/readMethod.ts';
import { useClub } from '#web/api/useClub.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { FilePick } from '#web/parts/FilePick.tsx';

/** A method from a file: refused with each wrong place and its reason, or kept as the next version of its name. */
export function ReadMethod() {
  const { method: kept } = useClub();
  const records = useRecords('method');
  const [, go] = useLocation();
  const [wrong, setWrong] = useState<{ name: string; problems: readonly MethodProblem[] } | null>(null);
  const take = async (file: File) => {
    const read = readMethod(await file.text());
    if ('problems' in read) return setWrong({ name: file.name, problems: read.problems });
    const methodDocument: Method = { ...read.method, version: nextVersion(kept, read.method) };
    const { id } = await records.create(
      { methodDocument },
      `${methodDocument.title}, version ${methodDocument.version}`,
    );
    go(`/methods/${id}`);
  };
  return (
    <section className="stack ruled">
      <h2>From a file</h2>
      <p>A method that was saved here or written elsewhere. Its fields are described in the guide.</p>
      <div className="row">
        <FilePick
          word="Read a method"
          accept=".json,application/json"
          onPick={(file) =>
            void take(file).catch((error: Error) =>
              setWrong({ name: file.name, problems: [ofWhole(error.message)] }),
            )
          }
        />
      </div>
      {wrong && (
        <div className="stack" role="alert">
          <p>
            <strong>{wrong.name} was not read in.</strong> Nothing was changed.
          </p>
          <MethodProblems problems={wrong.problems} />
        </div>
      )}
    </section>
  );
}

/** Where a method is wrong, and why. */
function MethodProblems({ problems }: { problems: readonly MethodProblem[] }) {
  return (
    <ul className="stack tight season-problems">
      {problems.map(({ place, message }) => (
        <li key={`${place} ${message}`}>
          {message} <span className="small quiet">{place}</span>
        </li>
      ))}
    </ul>
  );
}
