/** A wrong place of a file: its line, null where the file as a whole is meant, and the column or field. */
interface FileProblem {
  line: number | null;
  column: string;
  message: string;
}

/** What is wrong in a file, or only odd, place by place; `count` of all there are, of which the first are given. */
export function FileProblems(props: {
  name: string;
  problems: readonly FileProblem[];
  count: number;
  what?: 'wrong' | 'odd';
}) {
  const { name, problems, count, what = 'wrong' } = props;
  return (
    <>
      <div className="table-scroll">
        <table className="table" aria-label={`What is ${what} in ${name}`}>
          <thead>
            <tr>
              <th scope="col" className="number">
                line
              </th>
              <th scope="col">where</th>
              <th scope="col">what is {what}</th>
            </tr>
          </thead>
          <tbody>
            {problems.map(({ line, column, message }) => (
              <tr key={`${line} ${column} ${message}`}>
                <td className="number">{line ?? 'all'}</td>
                <td>{column}</td>
                <td>{message}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {count > problems.length && <p>And {count - problems.length} more.</p>}
    </>
  );
}
