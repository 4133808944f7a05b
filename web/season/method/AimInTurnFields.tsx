import { type AimInTurn, aimInTurn, mostOf } from '#contract/records/method.ts';
import { aimInTurnWords, ofWords } from '#contract/words/aimWords.ts';
import { basisWords } from '#contract/words/basisWords.ts';
import { counted } from '#contract/words/counted.ts';
import { Choice } from '#web/parts/Choice.tsx';
import { FigureField } from '#web/parts/FigureField.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { BandLevels } from './BandLevels.tsx';
import { firstAimInTurn } from './groupToBegin.ts';
import { InTurnFields } from './InTurnFields.tsx';
import { limitsOf, placeIn, useMethodFields } from './methodFields.ts';
import { ShareFields } from './ShareFields.tsx';

type Of<By extends AimInTurn['by']> = Extract<AimInTurn, { by: By }>;

const [percentShape, barAndBandsShape, capabilityShape, speedShape] = aimInTurn.options;
const limits = {
  percent: limitsOf(percentShape.shape.targets.element.shape.shares.element),
  bar: limitsOf(barAndBandsShape.shape.barShares.element),
  bands: limitsOf(barAndBandsShape.shape.bandShares.element),
  strength: limitsOf(capabilityShape.shape.bottomShares.element),
  speed: limitsOf(speedShape.shape.zones.element.shape.fromMps),
};
const mostTargets = basisWords.length;

/** What the loads of a group aim at, week by week; bands wave by wave. */
export function AimInTurnFields(props: {
  at: string;
  aim: AimInTurn;
  waveWeeks: number;
  onChange: (aim: AimInTurn) => void;
}) {
  const { at, aim, waveWeeks, onChange } = props;
  const byWeek = { per: 'week', most: waveWeeks } as const;
  return (
    <div className="stack tight">
      <Choice
        label="Aim at"
        showLabel
        options={aimInTurnWords}
        value={aim.by}
        onChange={(by) => by !== aim.by && onChange(firstAimInTurn[by])}
      />
      {aim.by === 'percent' && <Percentages {...{ at, aim, waveWeeks, onChange }} />}
      {aim.by === 'barAndBands' && (
        <>
          <div className="fields">
            <ShareFields
              {...byWeek}
              at={placeIn(at, 'barShares')}
              label="Bar"
              shares={aim.barShares}
              limits={limits.bar}
              onChange={(barShares) => onChange({ ...aim, barShares })}
            />
            <ShareFields
              at={placeIn(at, 'bandShares')}
              label="Bands at lockout"
              per="wave"
              most={mostOf.inTurn}
              shares={aim.bandShares}
              limits={limits.bands}
              onChange={(bandShares) => onChange({ ...aim, bandShares })}
            />
          </div>
          {aim.bandShares.length > 1 && (
            <p className="field-hint">
              Wave {aim.bandShares.length} needs a phase of{' '}
              {counted(aim.bandShares.length * waveWeeks, 'week')}; a shorter one ends before it, and each
              round begins at wave 1 again.
            </p>
          )}
          <BandLevels at={at} aim={aim} limits={limits.bands} onChange={onChange} />
        </>
      )}
      {aim.by === 'capability' && (
        <div className="fields">
          <ShareFields
            {...byWeek}
            at={placeIn(at, 'bottomShares')}
            label="At the bottom"
            shares={aim.bottomShares}
            limits={limits.strength}
            onChange={(bottomShares) => onChange({ ...aim, bottomShares })}
          />
          <ShareFields
            {...byWeek}
            at={placeIn(at, 'lockoutShares')}
            label="At lockout"
            shares={aim.lockoutShares}
            limits={limits.strength}
            onChange={(lockoutShares) => onChange({ ...aim, lockoutShares })}
          />
        </div>
      )}
      {aim.by === 'speed' && <Speeds {...{ at, aim, waveWeeks, onChange }} />}
    </div>
  );
}

function Percentages(props: {
  at: string;
  aim: Of<'percent'>;
  waveWeeks: number;
  onChange: (aim: AimInTurn) => void;
}) {
  const { at, aim, waveWeeks, onChange } = props;
  const put = (targets: Of<'percent'>['targets']) => onChange({ ...aim, targets });
  const isFree = (basis: string) => aim.targets.every((target) => target.basis !== basis);
  const free = basisWords.find(({ value }) => isFree(value));
  return (
    <>
      {aim.targets.map((target, place) => (
        <div key={target.basis} className="fields">
          <SelectField
            label="Counted on"
            value={target.basis}
            options={basisWords.filter(({ value }) => value === target.basis || isFree(value))}
            onChange={(basis) => put(aim.targets.with(place, { ...target, basis }))}
          />
          <ShareFields
            at={placeIn(placeIn(placeIn(at, 'targets'), place), 'shares')}
            label="Of maximum"
            per="week"
            most={waveWeeks}
            shares={target.shares}
            limits={limits.percent}
            onChange={(shares) => put(aim.targets.with(place, { ...target, shares }))}
          />
          {aim.targets.length > 1 && (
            <button type="button" className="plain" onClick={() => put(aim.targets.toSpliced(place, 1))}>
              Leave this percentage out
            </button>
          )}
        </div>
      ))}
      {free && aim.targets.length < mostTargets && (
        <div>
          <button
            type="button"
            className="plain"
            onClick={() => put([...aim.targets, { basis: free.value, shares: [0.7] }])}
          >
            Another percentage
          </button>
        </div>
      )}
    </>
  );
}

function Speeds(props: {
  at: string;
  aim: Of<'speed'>;
  waveWeeks: number;
  onChange: (aim: AimInTurn) => void;
}) {
  const { at, aim, waveWeeks, onChange } = props;
  return (
    <>
      <div className="fields">
        <InTurnFields
          label="Speed"
          per="week"
          list={aim.zones}
          most={waveWeeks}
          onChange={(zones) => onChange({ ...aim, zones })}
        >
          {(zone, place, of, put) =>
            (['fromMps', 'toMps'] as const).map((end) => (
              <ZoneEnd
                key={`${end} ${place}`}
                at={placeIn(placeIn(at, 'zones'), place)}
                end={end}
                label={`${end === 'fromMps' ? 'No slower than' : 'No faster than'}${of}`}
                value={zone[end]}
                onChange={(next) => put({ ...zone, [end]: next })}
              />
            ))
          }
        </InTurnFields>
      </div>
      <Choice
        label="Whose speed"
        showLabel
        options={ofWords}
        value={aim.of}
        onChange={(of) => onChange({ ...aim, of })}
      />
    </>
  );
}

function ZoneEnd(props: {
  at: string;
  end: 'fromMps' | 'toMps';
  label: string;
  value: number;
  onChange: (value: number) => void;
}) {
  const { at, end, label, value, onChange } = props;
  const field = useMethodFields(at);
  return (
    <FigureField {...field(end, label)} {...limits.speed} word="m/s" value={value} onChange={onChange} />
  );
}
