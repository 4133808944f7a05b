import type { GroupAsked } from '#contract/records/method.ts';
import { BlockFields } from '#web/setup/BlockFields.tsx';
import { InTurnFields } from './InTurnFields.tsx';

/** The steps of a group, week by week of the wave. */
export function StepsInTurn(props: {
  blocks: GroupAsked['blocks'];
  waveWeeks: number;
  onChange: (blocks: GroupAsked['blocks']) => void;
}) {
  const { blocks, waveWeeks, onChange } = props;
  return (
    <InTurnFields label="Steps" per="week" list={blocks} most={waveWeeks} onChange={onChange}>
      {(steps, week, of, put) => (
        <fieldset key={week} className="season-ticks stack tight" aria-label={`Steps${of}`}>
          {of !== '' && <h4>Week {week + 1}</h4>}
          <BlockFields blocks={steps} onChange={put} />
        </fieldset>
      )}
    </InTurnFields>
  );
}
