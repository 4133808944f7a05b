import type { KindName } from '#contract/records/allKinds.ts';
import type { Lift } from '#contract/records/lift.ts';
import { liftWords } from '#contract/words/liftWords.ts';
import type { Unit } from '#core/units/units.ts';
import { CheckField } from '#web/parts/CheckField.tsx';
import { FigureField } from '#web/parts/FigureField.tsx';
import { NumberField } from '#web/parts/NumberField.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import { type Units, useUnits } from '#web/parts/ViewUnits.tsx';
import type { SheetField } from './SheetField.ts';

/** One field of a sheet's form, by what it holds. */
export function SheetFieldInput<K extends KindName>(props: {
  field: SheetField<K>;
  value: unknown;
  onChange: (value: unknown) => void;
}) {
  const { field, value, onChange } = props;
  const units = useUnits();
  const shared = { label: field.label, ...(field.hint === undefined ? {} : { hint: field.hint }) };
  switch (field.as) {
    case 'text':
    case 'date':
      return (
        <TextField
          {...shared}
          type={field.as}
          value={typeof value === 'string' ? value : ''}
          required={field.required ?? false}
          maxLength={field.name === 'note' ? 2000 : 80}
          today={field.as === 'date' ? field.today : undefined}
          onChange={(text) => onChange(field.as === 'date' && text === '' ? null : text)}
        />
      );
    case 'quantity':
      return (
        <NumberField
          {...shared}
          valueSi={typeof value === 'number' ? value : null}
          unit={unitOf(field.of, units)}
          minSi={field.min}
          maxSi={field.max}
          required={field.required ?? false}
          onChange={onChange}
        />
      );
    case 'figure':
      return (
        <FigureField
          {...shared}
          value={typeof value === 'number' ? value : field.min}
          word={field.word}
          per={field.per}
          min={field.min}
          max={field.max}
          whole={field.whole}
          onChange={onChange}
        />
      );
    case 'check':
      return <CheckField label={field.label} checked={value === true} onChange={onChange} />;
    case 'choice':
      return (
        <SelectField
          {...shared}
          value={typeof value === 'string' ? value : ''}
          options={
            field.none === undefined ? field.options : [{ value: '', word: field.none }, ...field.options]
          }
          onChange={(chosen) => onChange(chosen === '' ? null : chosen)}
        />
      );
    case 'lifts':
      return (
        <LiftsField
          label={field.label}
          lifts={Array.isArray(value) ? (value as Lift[]) : []}
          onChange={onChange}
        />
      );
  }
}

function unitOf(of: 'mass' | 'length' | 'scale', units: Units): Unit {
  if (of === 'length') return units.length;
  if (of === 'mass') return units.mass;
  return units.mass === 'kg' ? 'kgf' : 'lbf';
}

function LiftsField(props: { label: string; lifts: readonly Lift[]; onChange: (lifts: Lift[]) => void }) {
  const { label, lifts, onChange } = props;
  const turn = (lift: Lift, on: boolean) =>
    onChange(
      liftWords.map(({ value }) => value).filter((value) => (value === lift ? on : lifts.includes(value))),
    );
  return (
    <fieldset className="lifts-field">
      <legend className="field-label">{label}</legend>
      {liftWords.map(({ value, word }) => (
        <CheckField
          key={value}
          label={word}
          checked={lifts.includes(value)}
          onChange={(on) => turn(value, on)}
        />
      ))}
      {lifts.length === 0 && <p className="field-error">At least one lift is needed.</p>}
    </fieldset>
  );
}
