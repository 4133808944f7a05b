import { fieldOf } from '#contract/records/fields.ts';
import { accessory, type DayAsked, hold, mostOf, sled } from '#contract/records/method.ts';
import { liftWords } from '#contract/words/liftWords.ts';
import { FigureField } from '#web/parts/FigureField.tsx';
import { quantityLimits, textLimits } from '#web/parts/limits.ts';
import { NumberField } from '#web/parts/NumberField.tsx';
import { PercentField } from '#web/parts/PercentField.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { EntriesFields } from './EntriesFields.tsx';
import { firstAccessory, firstHold, firstSled } from './firstEntries.ts';
import { limitsOf, placeIn, useMethodFields } from './methodFields.ts';
import { ShareFields } from './ShareFields.tsx';

type Put<Each> = { at: string; each: Each; put: (change: Partial<Each>) => void };

/** What a day has beside its groups: accessories, sleds, pushing against pins. */
export function BesideFields(props: {
  /** Path of the day. */
  at: string;
  day: DayAsked;
  onChange: (change: Partial<DayAsked>) => void;
}) {
  const { at, day, onChange } = props;
  return (
    <>
      <EntriesFields
        at={placeIn(at, 'accessories')}
        title="Accessories"
        one="accessory"
        nameOf={titleOf}
        list={day.accessories}
        most={mostOf.accessories}
        first={firstAccessory}
        onChange={(accessories) => onChange({ accessories })}
      >
        {(one) => <AccessoryFields {...one} />}
      </EntriesFields>
      <EntriesFields
        at={placeIn(at, 'sleds')}
        title="Sleds"
        one="sled"
        nameOf={titleOf}
        list={day.sleds}
        most={mostOf.sleds}
        first={firstSled}
        onChange={(sleds) => onChange({ sleds })}
      >
        {(one) => <SledFields {...one} />}
      </EntriesFields>
      <EntriesFields
        at={placeIn(at, 'holds')}
        title="Pushing against pins"
        one="push against pins"
        nameOf={titleOf}
        list={day.holds}
        most={mostOf.holds}
        first={firstHold}
        onChange={(holds) => onChange({ holds })}
      >
        {(one) => <HoldFields {...one} />}
      </EntriesFields>
    </>
  );
}

function AccessoryFields({ at, each, put }: Put<DayAsked['accessories'][number]>) {
  const field = useMethodFields(at);
  return (
    <>
      <TextField
        {...field('title', 'What')}
        {...textLimits(fieldOf('title', accessory.shape.title))}
        value={each.title}
        onChange={(title) => put({ title })}
      />
      <FigureField
        {...field('sets', 'Sets')}
        {...limitsOf(accessory.shape.sets)}
        value={each.sets}
        onChange={(sets) => put({ sets })}
      />
      <FigureField
        {...field('reps', 'Reps')}
        {...limitsOf(accessory.shape.reps)}
        value={each.reps}
        onChange={(reps) => put({ reps })}
      />
    </>
  );
}

function SledFields({ at, each, put }: Put<DayAsked['sleds'][number]>) {
  const { mass } = useUnits();
  const field = useMethodFields(at);
  const { label } = field('massKg', 'On the sled, with it');
  return (
    <>
      <TextField
        {...field('title', 'What')}
        {...textLimits(fieldOf('title', sled.shape.title))}
        value={each.title}
        onChange={(title) => put({ title })}
      />
      <FigureField
        {...field('trips', 'Trips')}
        {...limitsOf(sled.shape.trips)}
        value={each.trips}
        onChange={(trips) => put({ trips })}
      />
      <FigureField
        {...field('distanceM', 'Each trip')}
        {...limitsOf(sled.shape.distanceM)}
        word="m"
        value={each.distanceM}
        onChange={(distanceM) => put({ distanceM })}
      />
      <NumberField
        label={label}
        {...quantityLimits(fieldOf('massKg', sled.shape.massKg))}
        unit={mass}
        valueSi={each.massKg}
        onChange={(massKg) => massKg !== null && put({ massKg })}
      />
      <PercentField
        {...field('friction', 'The floor holds back')}
        {...limitsOf(sled.shape.friction)}
        value={each.friction}
        hint="Of the sled's weight, with what is on it, by a scale between you and the sled."
        onChange={(friction) => put({ friction })}
      />
    </>
  );
}

function HoldFields({ at, each, put }: Put<DayAsked['holds'][number]>) {
  const field = useMethodFields(at);
  return (
    <>
      <TextField
        {...field('title', 'What')}
        {...textLimits(fieldOf('title', hold.shape.title))}
        value={each.title}
        onChange={(title) => put({ title })}
      />
      <SelectField label="Lift" value={each.lift} options={liftWords} onChange={(lift) => put({ lift })} />
      <FigureField
        {...field('sets', 'Sets at each height')}
        {...limitsOf(hold.shape.sets)}
        value={each.sets}
        onChange={(sets) => put({ sets })}
      />
      <FigureField
        {...field('seconds', 'Each for')}
        {...limitsOf(hold.shape.seconds)}
        word="s"
        value={each.seconds}
        onChange={(seconds) => put({ seconds })}
      />
      <ShareFields
        at={placeIn(at, 'places')}
        label="Of the way up"
        per="height"
        shares={each.places}
        limits={limitsOf(hold.shape.places.element)}
        most={mostOf.places}
        onChange={(places) => put({ places })}
      />
    </>
  );
}

const titleOf = ({ title }: { title: string }) => title;
