import { useState } from 'react';
import type { Club } from '#contract/records/club.ts';
import { STANDARD_GRAVITY_MPS2 } from '#core/load/localGravity.ts';
import { gravityOf } from '#reckon/gear/gravityOf.ts';
import { useRecords } from '#web/api/useRecords.ts';
import { Choice } from '#web/parts/Choice.tsx';
import { FigureField } from '#web/parts/FigureField.tsx';
import { Known } from '#web/parts/Known.tsx';
import { NumberField } from '#web/parts/NumberField.tsx';
import { PercentField } from '#web/parts/PercentField.tsx';
import { RecordForm } from '#web/parts/RecordForm.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { lengthWords, massWords } from '#web/parts/ViewUnits.tsx';
import { BoundsFields } from '#web/setup/BoundsFields.tsx';

const timeZones = Intl.supportedValuesOf('timeZone');

/** Name, units, place on earth and the club's rules for its bands. */
export function ClubForm({ club }: { club: Club }) {
  const clubs = useRecords('club');
  const [draft, setDraft] = useState(club);
  const put = (change: Partial<Club>) => setDraft({ ...draft, ...change });
  const placed = draft.latitudeDeg !== null;
  return (
    <RecordForm
      title="Settings"
      onSave={() => clubs.update(draft, 'the settings')}
      onLeave={() => setDraft(club)}
    >
      <TextField label="Name" value={draft.name} required maxLength={80} onChange={(name) => put({ name })} />
      <SelectField
        label="Time zone"
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
        <legend>Where the club stands</legend>
        <div className="fields">
          {placed ? (
            <>
              <FigureField
                label="Latitude"
                value={draft.latitudeDeg ?? 0}
                word="°"
                min={-90}
                max={90}
                hint="South is minus."
                onChange={(latitudeDeg) => put({ latitudeDeg })}
              />
              <NumberField
                label="Above the sea"
                valueSi={draft.heightAboveSeaM}
                unit="m"
                minSi={-500}
                maxSi={6000}
                required
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
              known={placed ? 'measured' : 'assumed'}
              why={
                placed
                  ? 'Computed from latitude and height by the WGS 84 formula for normal gravity.'
                  : `Assumed: the standard value ${STANDARD_GRAVITY_MPS2}. It differs by up to 0.3 % from place to place; give latitude and height.`
              }
            />
          </div>
        </div>
      </fieldset>
      <fieldset className="part-of-form">
        <legend>Rules for bands</legend>
        <div className="fields">
          <FigureField
            label="To change one pair"
            value={draft.bandChangeMinutes}
            word="min"
            min={0}
            max={10}
            hint="A day counts this for every pair taken off or put on."
            onChange={(bandChangeMinutes) => put({ bandChangeMinutes })}
          />
          <PercentField
            label="Mismatch and drift allowed"
            value={draft.pairMismatchShare}
            min={0.005}
            max={0.5}
            hint="Two bands of a pair, or one band since it was measured, may differ by this. 5 is assumed."
            onChange={(pairMismatchShare) => put({ pairMismatchShare })}
          />
          <FigureField
            label="Longest stretch"
            value={draft.safeStretchRatio}
            word="times"
            min={1.2}
            max={6}
            hint="Of the rest length. 2.5 is assumed; the maker's figure rules."
            onChange={(safeStretchRatio) => put({ safeStretchRatio })}
          />
          <FigureField
            label="Measure again after"
            value={draft.remeasureAfterDays}
            word="days"
            min={1}
            max={3650}
            whole
            onChange={(remeasureAfterDays) => put({ remeasureAfterDays })}
          />
          <FigureField
            label="or after"
            value={draft.remeasureAfterCycles}
            word="reps"
            min={1}
            max={1_000_000}
            whole
            onChange={(remeasureAfterCycles) => put({ remeasureAfterCycles })}
          />
        </div>
      </fieldset>
      <fieldset className="part-of-form">
        <legend>What is proposed</legend>
        <BoundsFields bounds={draft} onChange={put} />
      </fieldset>
    </RecordForm>
  );
}
