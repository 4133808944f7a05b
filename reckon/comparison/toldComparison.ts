import type { ToldComparison } from '#contract/comparison/toldComparison.ts';
import { InputError } from '#contract/compute/InputError.ts';
import { runOperation } from '#contract/compute/runOperation.ts';
import { weighComparisonOperation } from '#contract/compute/weighComparisonOperation.ts';
import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Comparison } from '#contract/records/comparison.ts';
import type { LoggedSet } from '#contract/records/loggedSet.ts';
import type { Long } from '#contract/records/long.ts';
import type { StrengthEstimate } from '#contract/strength/strengthEstimate.ts';
import { comparisonCautions } from '#contract/words/comparisonCautions.ts';
import { dateText } from '#contract/words/dateText.ts';
import { foretoldSentences } from '#contract/words/foretoldSentences.ts';
import { askedWeighing } from './askedWeighing.ts';
import { lookedAt } from './lookedAt.ts';

/** One comparison of the club as its log stands on a day; `records` with the gear that the log names. */
export async function toldComparison(
  records: ClubRecords,
  log: Long<LoggedSet>,
  estimates: readonly StrengthEstimate[],
  comparison: Comparison,
  today: string,
): Promise<ToldComparison> {
  const { id, title, lift, family, planDocument: plan } = comparison;
  const told = {
    comparisonId: id,
    title,
    foretold: foretoldSentences(plan),
    cautions: [...comparisonCautions],
  };
  if (today < plan.startsOn)
    return { ...told, report: null, sentences: [`It begins on ${dateText(plan.startsOn)}.`] };
  const out = records.takenOut.filter(({ comparisonId }) => comparisonId === id);
  const asked = await askedWeighing(
    records,
    log,
    estimates,
    plan,
    lookedAt({ outcome: plan.outcome, lift, family }),
    new Map(out.map(({ lifterId, fromOn }) => [lifterId, fromOn])),
  );
  try {
    const answer = await runOperation(weighComparisonOperation, asked);
    const { sentences, ...report } = weighComparisonOperation.outputSchema.parse(answer);
    return { ...told, report, sentences };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { ...told, report: null, sentences: [error.message] };
  }
}
