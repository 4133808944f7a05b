import { Link } from 'wouter';
import { dateText } from '#contract/words/dateText.ts';
import { useClub } from '#web/api/useClub.ts';
import { methodChoices } from '../methodChoices.ts';
import { ReadMethod } from './ReadMethod.tsx';

/** Every way of training that a season can follow, the club's own first, and the door for one from a file. */
export function MethodsPage() {
  const choices = methodChoices(useClub());
  return (
    <div className="stack loose">
      <div className="row ends base">
        <h1>Methods</h1>
        <Link href="/">Season</Link>
      </div>
      <p>
        A method says what each phase before a meet asks for: days, groups, shares, sets and reps. A season
        follows one version of it. Changing a method makes a new version of it; each season keeps its own
        until you choose another.
      </p>
      <ul className="stack">
        {choices.map(({ value, word, method, keptId }) => (
          <li key={value} className="stack tight ruled">
            <h2>
              <Link href={`/methods/${value}`}>{word}</Link>
            </h2>
            <p>{method.says}</p>
            <p className="small quiet">
              {method.forWhom} {keptId !== null && `Kept since ${dateText(method.madeOn)}.`}
            </p>
          </li>
        ))}
      </ul>
      <ReadMethod />
    </div>
  );
}
