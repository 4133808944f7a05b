import { useState } from 'react';
import { isSame, mergeFields } from '#contract/changes/mergeFields.ts';
import type { Club } from '#contract/records/club.ts';
import { weeksToBars } from '#contract/records/method.ts';
import { counted } from '#contract/words/counted.ts';
import { STANDARD_GRAVITY_MPS2 } from '#core/load/localGravity.ts';
import { gravityOf, isGravityAssumed } from '#reckon/gear/gravityOf.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { CheckField } from '#web/parts/CheckField.tsx';
import { Choice } from '#web/parts/Choice.tsx';
import { FigureField } from '#web/parts/FigureField.tsx';
import { Known } from '#web/parts/Known.tsx';
import { NumberField } from '#web/parts/NumberField.tsx';
import { PercentField } from '#web/parts/PercentField.tsx';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useRecordFields } from '#web/parts/useRecordFields.ts';
import { lengthWords, massWords } from '#web/parts/ViewUnits.tsx';
import { BoundsFields } from '#web/setup/BoundsFields.tsx';

const timeZones = Intl.supportedValuesOf('timeZone');

const labels = {
  name: 'Name',
  timeZone: 'Time zone',
  trainingStartsAt: 'Training usually begins at',
  trainingMinutes: 'and lasts',
  namesInCalendar: 'The calendar says by first names who trains, to everybody who reads it',
  latitudeDeg: 'Latitude',
  heightAboveSeaM: 'Above the sea',
  bandChangeMinutes: 'To change one pair',
  pairMismatchShare: 'Mismatch and drift allowed',
  wallStepKg: 'Bar and collars, to the nearest',
  safeStretchRatio: 'Longest stretch',
  remeasureAfterDays: 'Measure again after',
  remeasureAfterCycles: 'or after',
  nearWeeks: 'Worked out to bar and bands',
};

const nearWeeksOptions = [
  { value: '', word: 'as many weeks as the method says' },
  { value: '0', word: 'no week before its day' },
  ...Array.from({ length: weeksToBars.maxValue! }, (_, at) => ({
    value: String(at + 1),
    word: counted(at + 1, 'week'),
  })),
];

/** Name, units, place on earth and the club's rules for its bands. */
export function ClubForm({ club }: { club: Club }) {
  const clubs = useRecords('club');
  // What the draft began from.
  const [found, setFound] = useState(club);
  const [draft, setDraft] = useState(club);
  const begin = (from: Club) => {
    setFound(from);
    setDraft(from);
  };
  // Where nothing is typed yet, what others save is shown; what is typed stays.
  if (isSame(draft, found) && !isSame(club, found)) begin(club);
  const put = (change: Partial<Club>) => setDraft({ ...draft, ...change });
  const save = async () => {
    const saved = await clubs.update(draft, 'the settings', found);
    setFound(saved);
    // What was typed while it was saved stays typed.
    setDraft((typed) => mergeFields(draft, saved, typed, 'yours').merged as Club);
  };
  const fields = useRecordFields('club', draft, club, labels);
  const placed = draft.latitudeDeg !== null;
  const isAssumed = isGravityAssumed({ club: [draft] });
  return (
    <RecordForm title="Settings" onSave={save} onLeave={() => begin(club)} wrong={fields.wrong}>
      <TextField {...fields.text('name')} value={draft.name} onChange={(name) => put({ name })} />
      <SelectField
        {...fields.choice('timeZone')}
        value={draft.timeZone}
        options={[...new Set(['UTC', draft.timeZone, ...timeZones])].map((zone) => ({
          value: zone,
          word: zone.replaceAll('_', ' '),
        }))}
        hint="Decides which day is today."
        onChange={(timeZone) => put({ timeZone })}
      />
      <div className="row">
        <Choice
          label="Mass"
          showLabel
          options={massWords}
          value={draft.massUnit}
          onChange={(massUnit) => put({ massUnit })}
        />
        <Choice
          label="Heights"
          showLabel
          options={lengthWords}
          value={draft.lengthUnit}
          onChange={(lengthUnit) => put({ lengthUnit })}
        />
      </div>
      <fieldset className="part-of-form">
        <legend>Training days in the calendar</legend>
        <div className="stack">
          <div className="fields">
            <TextField
              {...fields.text('trainingStartsAt')}
              type="time"
              value={draft.trainingStartsAt ?? ''}
              hint="By the club's clock. Empty: a training day is a whole day."
              onChange={(time) => put({ trainingStartsAt: time === '' ? null : time })}
            />
            <FigureField
              {...fields.figure('trainingMinutes')}
              value={draft.trainingMinutes}
              word="min"
              onChange={(trainingMinutes) => put({ trainingMinutes })}
            />
          </div>
          <CheckField
            label={labels.namesInCalendar}
            checked={draft.namesInCalendar}
            onChange={(namesInCalendar) => put({ namesInCalendar })}
          />
        </div>
      </fieldset>
      <fieldset className="part-of-form">
        <legend>Where the club is</legend>
        <div className="fields">
          {placed ? (
            <>
              <FigureField
                {...fields.figure('latitudeDeg')}
                value={draft.latitudeDeg ?? 0}
                word="°"
                hint="South is minus."
                onChange={(latitudeDeg) => put({ latitudeDeg })}
              />
              <NumberField
                {...fields.quantity('heightAboveSeaM')}
                required
                valueSi={draft.heightAboveSeaM}
                unit="m"
                onChange={(heightAboveSeaM) => put({ heightAboveSeaM })}
              />
            </>
          ) : (
            <div>
              <button type="button" onClick={() => put({ latitudeDeg: 50, heightAboveSeaM: 100 })}>
                Say where
              </button>
            </div>
          )}
          <div className="stack tight">
            <span className="field-label">Gravity there</span>
            <Known
              value={gravityOf({ club: [draft] }).toFixed(4)}
              unit="m/s²"
              known={isAssumed ? 'assumed' : 'measured'}
              why={
                isAssumed
                  ? `Assumed: the standard value ${STANDARD_GRAVITY_MPS2}. It differs by up to 0.3 % from place to place; give latitude and height.`
                  : 'Computed from latitude and height by the WGS 84 formula for normal gravity.'
              }
            />
          </div>
        </div>
      </fieldset>
      <fieldset className="part-of-form">
        <legend>Rules for bands</legend>
        <div className="fields">
          <FigureField
            {...fields.figure('bandChangeMinutes')}
            value={draft.bandChangeMinutes}
            word="min"
            hint="Counted on a day for every pair taken off or put on."
            onChange={(bandChangeMinutes) => put({ bandChangeMinutes })}
          />
          <PercentField
            {...fields.figure('pairMismatchShare')}
            value={draft.pairMismatchShare}
            hint="Two bands of a pair, or one band since it was measured, may differ by this. 5 is our assumption."
            onChange={(pairMismatchShare) => put({ pairMismatchShare })}
          />
          <FigureField
            {...fields.figure('safeStretchRatio')}
            value={draft.safeStretchRatio}
            word="times"
            hint="Of the rest length. 2.5 is our assumption; the maker's figure comes first."
            onChange={(safeStretchRatio) => put({ safeStretchRatio })}
          />
          <FigureField
            {...fields.figure('remeasureAfterDays')}
            value={draft.remeasureAfterDays}
            word="days"
            onChange={(remeasureAfterDays) => put({ remeasureAfterDays })}
          />
          <FigureField
            {...fields.figure('remeasureAfterCycles')}
            value={draft.remeasureAfterCycles}
            word="reps"
            onChange={(remeasureAfterCycles) => put({ remeasureAfterCycles })}
          />
        </div>
      </fieldset>
      <fieldset className="part-of-form">
        <legend>What loaders read</legend>
        <div className="fields">
          <NumberField
            {...fields.quantity('wallStepKg')}
            valueSi={draft.wallStepKg}
            unit={draft.massUnit}
            hint="On sheet, card and screen, with discs by their faces and the true mass beside it. Empty: the true mass."
            onChange={(wallStepKg) => put({ wallStepKg })}
          />
        </div>
      </fieldset>
      <fieldset className="part-of-form">
        <legend>Seasons ahead</legend>
        <div className="fields">
          <SelectField
            {...fields.choice('nearWeeks')}
            value={draft.nearWeeks === null ? '' : String(draft.nearWeeks)}
            options={nearWeeksOptions}
            hint="From today on, of every season. A number here goes before the method's. Later weeks are ranges; more weeks take longer to work out."
            onChange={(weeks) => put({ nearWeeks: weeks === '' ? null : Number(weeks) })}
          />
        </div>
      </fieldset>
      <fieldset className="part-of-form">
        <legend>What is proposed</legend>
        <BoundsFields bounds={draft} onChange={put} />
      </fieldset>
      <TextField
        label="Note"
        value={draft.note}
        maxLength={2000}
        hint="Shown at the top of this page."
        onChange={(note) => put({ note })}
      />
    </RecordForm>
  );
}
