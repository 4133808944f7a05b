import type { ComparisonWish } from '#contract/comparison/comparisonWish.ts';
import { useOutlook } from '#web/api/useComparison.ts';
import { useWorkTold } from '#web/api/useWorkTold.ts';
import { Waiting } from '#web/parts/Waiting.tsx';

/** What could be seen, the plain answer first, before anybody starts; and who with whom. */
export function OutlookView({ wish, wrong }: { wish: ComparisonWish | null; wrong: string | null }) {
  const { outlook, error, isBehind, isAsked, stop, askAgain } = useOutlook(wish);
  const told = useWorkTold('comparison');
  const isMissing = wish !== null && !error && (outlook === undefined || isBehind);
  return (
    <section className="whole-line stack comparison-outlook" aria-label="What could be seen">
      <h3>What could be seen</h3>
      {error && <p className="caution">{error.message}</p>}
      {wish === null && <p className="quiet">{wrong ?? 'Fill in the fields above, and it is said here.'}</p>}
      {isMissing && isAsked && (
        <Waiting
          what="Simulating such comparisons:"
          usually="Twenty lifters take a few seconds."
          told={told}
          onStop={stop}
        />
      )}
      {isMissing && !isAsked && (
        <p className="row">
          Stopped; what could be seen of this is not worked out.
          <button type="button" onClick={askAgain}>
            Work it out after all
          </button>
        </p>
      )}
      {!error && outlook !== undefined && (
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
