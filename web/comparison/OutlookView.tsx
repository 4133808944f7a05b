import type { ComparisonWish } from '#contract/comparison/comparisonWish.ts';
import { useOutlook } from '#web/api/useComparison.ts';

/** What could be seen, the plain answer first, before anybody starts; and who with whom. */
export function OutlookView({ wish, wrong }: { wish: ComparisonWish | null; wrong: string | null }) {
  const { outlook, error, isBehind } = useOutlook(wish);
  return (
    <section className="whole-line stack comparison-outlook" aria-label="What could be seen">
      <h3>What could be seen</h3>
      {error ? (
        <p className="caution">{error.message}</p>
      ) : wish === null ? (
        <p className="quiet">{wrong ?? 'Fill in the fields above, and it is said here.'}</p>
      ) : outlook === undefined ? (
        <p className="quiet" aria-busy="true">
          Simulating such comparisons.
        </p>
      ) : (
        <div className={isBehind ? 'stack comparison-behind' : 'stack'} aria-busy={isBehind}>
          <output
            className={
              outlook.foretold.outlook === 'canBeSeen' ? 'comparison-answer' : 'comparison-answer caution'
            }
          >
            {outlook.sentences[0]}
          </output>
          {outlook.sentences.slice(1).map((sentence) => (
            <p key={sentence}>{sentence}</p>
          ))}
          <p>
            {outlook.pairs.length > 0 &&
              `Pairs of similar lifters, a coin each: ${outlook.pairs.map((pair) => pair.map(({ name }) => name).join(' and ')).join('; ')}. `}
            {outlook.alone.length > 0 &&
              `Without a similar partner, two to a coin: ${outlook.alone.map(({ name }) => name).join(', ')}.`}
          </p>
          <Cautions cautions={outlook.cautions} />
        </div>
      )}
    </section>
  );
}

/** What is said wherever people are trained by lot. */
export function Cautions({ cautions }: { cautions: readonly string[] }) {
  return (
    <ul className="caution stack tight">
      {cautions.map((caution) => (
        <li key={caution}>{caution}</li>
      ))}
    </ul>
  );
}
