import { sinceThen } from '#contract/paper/sinceThen.ts';

/** What happened since, set apart from what stands under the number of the paper. */
export function SinceThen({ sentences }: { sentences: readonly string[] }) {
  return sentences.map((sentence) => (
    <p key={sentence} className="since-then">
      {sinceThen(sentence)}
    </p>
  ));
}
