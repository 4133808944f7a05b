import { useState } from 'react';
import type { BandPair } from '#contract/records/gear.ts';
import { type Usual, usualQuestion } from '#contract/words/usualQuestion.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { FigureField } from '#web/parts/FigureField.tsx';
import { NumberField } from '#web/parts/NumberField.tsx';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useRecordFields } from '#web/parts/useRecordFields.ts';
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
}) {
  const { pair } = props;
  const units = useUnits();
  const pairs = useRecords('bandPair');
  const [draft, setDraft] = useState<Draft>(pair ?? blank);
  const put = (change: Partial<Draft>) => setDraft({ ...draft, ...change });
  const fields = useRecordFields('bandPair', draft, pair, labels);
  const width = fields.quantity('widthMm');
  const askOfRest = (m: number) => usualQuestion(m, units.length, 'Rest length', usualRestM);
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
      wrong={fields.wrong}
    >
      <TextField
        {...fields.text('label')}
        value={draft.label}
        hint="What the club writes on the bands, one label for the pair."
        onChange={(label) => put({ label })}
      />
      <NumberField
        {...width}
        valueSi={draft.widthMm === null ? null : draft.widthMm / 1000}
        unit="mm"
        minSi={width.minSi! / 1000}
        maxSi={width.maxSi! / 1000}
        hint="Across the flat band."
        ask={(m) => usualQuestion(m, 'mm', 'Width', usualWidthM)}
        onChange={(m) => put({ widthMm: m === null ? null : m * 1000 })}
      />
      <NumberField
        {...fields.quantity('restLengthAM')}
        valueSi={draft.restLengthAM}
        unit={units.length}
        hint="The loop lying flat, end to end."
        onChange={(restLengthAM) => put({ restLengthAM })}
        ask={askOfRest}
      />
      <NumberField
        {...fields.quantity('restLengthBM')}
        valueSi={draft.restLengthBM}
        unit={units.length}
        hint="Leave empty if it is as long as a."
        onChange={(restLengthBM) => put({ restLengthBM })}
        ask={askOfRest}
      />
      {pair && (
        <>
          <NumberField
            {...fields.quantity('nominalKg')}
            valueSi={draft.nominalKg}
            unit={units.mass}
            hint="What the gym says the pair adds at lockout; shown beside the true one."
            onChange={(nominalKg) => put({ nominalKg })}
          />
          <TextField
            {...fields.text('installedOn')}
            type="date"
            value={draft.installedOn ?? ''}
            onChange={(date) => put({ installedOn: date || null })}
          />
          <FigureField
            {...fields.figure('cycles')}
            hint="Reps done with it before sets were logged; every logged rep is added to them."
            value={draft.cycles}
            onChange={(cycles) => put({ cycles })}
          />
          <TextField {...fields.text('note')} value={draft.note} onChange={(note) => put({ note })} />
        </>
      )}
    </RecordForm>
  );
}

/** Loops from the shortest for the arms to the longest of the trade. Common practice, no source. */
const usualRestM: Usual = [0.2, 1.3];

/** From the narrowest to the widest of the trade (m). Common practice, no source. */
const usualWidthM: Usual = [0.005, 0.11];

const labels = {
  label: 'Label',
  widthMm: 'Width',
  restLengthAM: 'Rest length, band a',
  restLengthBM: 'Rest length, band b',
  nominalKg: 'Number by habit',
  installedOn: 'In use since',
  cycles: 'Reps before the log',
  note: 'Note',
};

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
