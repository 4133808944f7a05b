import { restText } from '#contract/paper/effortWords.ts';
import { givenSet } from '#contract/records/loggedSet.ts';
import { fieldIn, quantityLimits } from '#web/parts/limits.ts';
import { NumberField } from '#web/parts/NumberField.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { SpeedsField } from './SpeedsField.tsx';
import { StoppedAt } from './StoppedAt.tsx';
import type { SetDraft } from './setDraft.ts';
import type { StartOnRange } from './startOnRange.ts';
import { useBodyMassQuestion } from './useBodyMassQuestion.ts';

/** How a set went, as far as somebody looked: where a miss stopped, speeds, reps left, rest, body mass. */
export function SeenFields({
  set,
  start,
  onChange,
}: {
  set: SetDraft;
  start: StartOnRange | null;
  onChange: (change: Partial<SetDraft>) => void;
}) {
  const units = useUnits();
  const askOfMass = useBodyMassQuestion(set.lifterId, set.doneOn);
  return (
    <>
      {set.made < set.reps && (
        <StoppedAt s={set.stoppedAtS} start={start} onChange={(stoppedAtS) => onChange({ stoppedAtS })} />
      )}
      <SelectField
        label="Reps left"
        value={String(set.repsInReserve ?? '')}
        options={repsLeft}
        onChange={(left) => onChange({ repsInReserve: left === '' ? null : Number(left) })}
      />
      <SpeedsField
        label="Mean speed up"
        speedsMps={set.meanSpeedsMps}
        made={set.made}
        onChange={(meanSpeedsMps) => onChange({ meanSpeedsMps })}
      />
      <SpeedsField
        label="Peak speed"
        speedsMps={set.peakSpeedsMps}
        made={set.made}
        onChange={(peakSpeedsMps) => onChange({ peakSpeedsMps })}
      />
      <SelectField
        label="Rest before it"
        value={String(set.restS ?? '')}
        options={rests(set.restS)}
        onChange={(rest) => onChange({ restS: rest === '' ? null : Number(rest) })}
      />
      <NumberField
        label="Body mass that day"
        valueSi={set.bodyMassKg}
        unit={units.mass}
        {...bodyMassLimits}
        ask={askOfMass}
        onChange={(bodyMassKg) => onChange({ bodyMassKg })}
      />
    </>
  );
}

const bodyMassLimits = quantityLimits(fieldIn(givenSet.shape, 'bodyMassKg'));

const repsLeft = [
  { value: '', word: 'not asked' },
  { value: '0', word: 'none' },
  { value: '0.5', word: 'perhaps one' },
  ...[1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5, 6, 7, 8, 10].map((n) => ({ value: String(n), word: String(n) })),
];

const usualRestsS = [30, 45, 60, 75, 90, 120, 150, 180, 240, 300, 420, 600];

function rests(ownS: number | null) {
  const all = ownS === null || usualRestsS.includes(ownS) ? usualRestsS : [ownS, ...usualRestsS];
  return [
    { value: '', word: 'not timed' },
    ...all.map((s) => ({ value: String(s), word: `${restText(s)} min` })),
  ];
}
