import type { ArchiveWords } from '#contract/archive/archiveWords.ts';

/** What an archive holds beside what the club holds now, a line for each kind of which either has any. */
export function ArchiveHolds({ name, words }: { name: string; words: ArchiveWords }) {
  return (
    <div className="stack tight">
      <output>
        {words.isOf}
        {words.older && <strong> {words.older}</strong>}
      </output>
      <table className="table archive-holds" aria-label={`What ${name} holds`}>
        <thead>
          <tr>
            <th scope="col">Kind</th>
            <th scope="col" className="number">
              in the file
            </th>
            <th scope="col" className="number">
              here now
            </th>
          </tr>
        </thead>
        <tbody>
          {words.counts.map(({ kind, inFile, here }) => (
            <tr key={kind}>
              <th scope="row">{kind}</th>
              <td className="number">{inFile}</td>
              <td className="number">{here}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
