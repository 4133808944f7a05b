import { Link } from 'wouter';
import { gearWarningSentences } from '#contract/season/gearWarningSentences.ts';
import { useGearAhead } from '#web/api/useGearAhead.ts';

/** Whether racks and bands do for what is planned, of all seasons together since they share the gear. */
export function GearAheadSection() {
  const { warnings, error } = useGearAhead();
  return (
    <section className="stack ruled">
      <h2>Racks and bands ahead</h2>
      {error ? (
        <p className="caution">{error.message}</p>
      ) : warnings === undefined ? (
        <p className="quiet">Checking every day of all seasons.</p>
      ) : warnings.length === 0 ? (
        <p className="quiet">They are enough for every day that is planned, all seasons together.</p>
      ) : (
        <>
          <ul className="stack tight">
            {gearWarningSentences(warnings).map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
          <p className="row screen-only">
            <Link href="~/gear/racks">Racks and hookups</Link>
            <Link href="~/gear">Bands</Link>
            <Link href="~/gear/boxes">Boxes and mats</Link>
          </p>
        </>
      )}
    </section>
  );
}
