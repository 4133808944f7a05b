import { unbroken } from '#contract/paper/effortWords.ts';
import { noDiscs } from '#contract/paper/lifterLine.ts';
import type { LifterLine } from '#contract/paper/RackSheetModel.ts';

/** What stands beside the large discs, dashed where nobody weighed them; an empty bar has none on either side. */
export function BesideDiscs({ lifter }: { lifter: LifterLine }) {
  return (
    <>
      <span className={lifter.barKnown === 'assumed' ? 'dashed' : undefined}>
        {lifter.aSide === noDiscs ? 'the bar alone' : 'kg a side'}
      </span>
      {lifter.trueBar && `, ${unbroken(lifter.trueBar)}`}
      {lifter.barByCoach && ', set by the coach'}
    </>
  );
}
