import { useState } from 'react';
import type { BandPair } from '#contract/records/gear.ts';
import type { LengthUnit } from '#contract/words/viewUnits.ts';
import { formatQuantity } from '#core/units/formatQuantity.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { FigureField } from '#web/parts/FigureField.tsx';
import { NumberField } from '#web/parts/NumberField.tsx';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';

type Draft = Omit<BandPair, 'id' | 'widthMm' | 'restLengthAM'> & {
  widthMm: number | null;
  restLengthAM: number | null;
};

/** The pair itself: label, width and rest length first, the rest when there is time for it. */
export function BandForm(props: {
  pair: BandPair | null;
  onSaved: (pair: BandPair) => void;
  onLeave: () => void;
  onRemove?: () => void;
  /** Shortest length that each band was read at: none can have been longer at rest. */
  shortestReadM?: { a: number; b: number };
}) {
  const { pair } = props;
  const units = useUnits();
  const pairs = useRecords('bandPair');
  const [draft, setDraft] = useState<Draft>(pair ?? blank);
  const put = (change: Partial<Draft>) => setDraft({ ...draft, ...change });
  const save = async () => {
    const { widthMm, restLengthAM } = draft;
    if (widthMm === null || restLengthAM === null) return;
    const filled = { ...draft, widthMm, restLengthAM };
    props.onSaved(
      pair
        ? await pairs.update({ ...filled, id: pair.id }, `band pair ${draft.label}`)
        : await pairs.create(filled),
    );
  };
  return (
    <RecordForm
      title={pair ? `Change ${pair.label}` : 'The pair'}
      saveWord={pair ? 'Save' : 'Go on to the scale'}
      leaveWord={pair ? 'Leave unchanged' : 'Not now'}
      onSave={save}
      onLeave={props.onLeave}
      onRemove={props.onRemove}
      wrong={restTooLong(draft, props.shortestReadM, units.length)}
    >
      <TextField
        label="Label"
        value={draft.label}
        required
        maxLength={60}
        hint="What the club writes on the bands, one label for the pair."
        onChange={(label) => put({ label })}
      />
      <NumberField
        label="Width"
        valueSi={draft.widthMm === null ? null : draft.widthMm / 1000}
        unit="mm"
        minSi={0.003}
        maxSi={0.2}
        required
        hint="Across the flat band."
        onChange={(m) => put({ widthMm: m === null ? null : m * 1000 })}
      />
      <NumberField
        label="Rest length, band a"
        valueSi={draft.restLengthAM}
        unit={units.length}
        minSi={0.1}
        maxSi={3}
        required
        hint="The loop lying flat, end to end."
        onChange={(restLengthAM) => put({ restLengthAM })}
      />
      <NumberField
        label="Rest length, band b"
        valueSi={draft.restLengthBM}
        unit={units.length}
        minSi={0.1}
        maxSi={3}
        hint="Leave empty if it is as long as a."
        onChange={(restLengthBM) => put({ restLengthBM })}
      />
      {pair && (
        <>
          <NumberField
            label="Number by habit"
            valueSi={draft.nominalKg}
            unit={units.mass}
            minSi={0}
            maxSi={500}
            hint="What the gym says the pair adds at lockout; shown beside the true one."
            onChange={(nominalKg) => put({ nominalKg })}
          />
          <TextField
            label="In use since"
            type="date"
            value={draft.installedOn ?? ''}
            onChange={(date) => put({ installedOn: date || null })}
          />
          <FigureField
            label="Reps before the log"
            hint="Done with it before sets were logged; every logged rep is counted on top."
            value={draft.cycles}
            min={0}
            max={1_000_000}
            whole
            onChange={(cycles) => put({ cycles })}
          />
          <TextField label="Note" value={draft.note} maxLength={2000} onChange={(note) => put({ note })} />
        </>
      )}
    </RecordForm>
  );
}

function restTooLong(
  { restLengthAM, restLengthBM }: Draft,
  shortest: { a: number; b: number } | undefined,
  unit: LengthUnit,
): string | null {
  if (shortest === undefined || restLengthAM === null) return null;
  const rest = { a: restLengthAM, b: restLengthBM ?? restLengthAM };
  const side = (['a', 'b'] as const).find((each) => rest[each] >= shortest[each]);
  if (side === undefined) return null;
  return `Rest length of band ${side} is ${formatQuantity(rest[side], unit)}, but it pulled at ${formatQuantity(shortest[side], unit)}: it must be shorter than every reading, or the reading goes first.`;
}

const blank: Draft = {
  label: '',
  widthMm: null,
  restLengthAM: null,
  restLengthBM: null,
  nominalKg: null,
  installedOn: null,
  cycles: 0,
  retiredOn: null,
  note: '',
};
