import { Link } from 'wouter';
import type { KindName } from '#contract/records/allKinds.ts';
import type { Lift } from '#contract/records/lift.ts';
import { liftWords } from '#contract/words/liftWords.ts';
import { usualQuestion } from '#contract/words/usualQuestion.ts';
import type { Unit } from '#core/units/units.ts';
import { CheckField } from '#web/parts/CheckField.tsx';
import { FigureField } from '#web/parts/FigureField.tsx';
import { NumberField } from '#web/parts/NumberField.tsx';
import { SelectField } from '#web/parts/SelectField.tsx';
import { TextField } from '#web/parts/TextField.tsx';
import type { RecordFields } from '#web/parts/useRecordFields.ts';
import { type Units, useUnits } from '#web/parts/ViewUnits.tsx';
import type { TableField } from './TableField.ts';

/** One field of a table's form, by what it holds. */
export function TableFieldInput<K extends KindName>(props: {
  field: TableField<K>;
  fields: RecordFields<K>;
  value: unknown;
  onChange: (value: unknown) => void;
}) {
  const { field, fields, value, onChange } = props;
  const { hint } = field;
  const units = useUnits();
  switch (field.as) {
    case 'text':
    case 'date':
      return (
        <TextField
          {...fields.text(field.name)}
          hint={hint}
          type={field.as}
          value={typeof value === 'string' ? value : ''}
          onChange={(text) => onChange(field.as === 'date' && text === '' ? null : text)}
        />
      );
    case 'quantity': {
      const { label, usual } = field;
      const unit = unitOf(field.of, units);
      return (
        <NumberField
          {...fields.quantity(field.name)}
          hint={hint}
          valueSi={typeof value === 'number' ? value : null}
          unit={unit}
          onChange={onChange}
          ask={usual && ((si) => usualQuestion(si, unit, label, usual))}
        />
      );
    }
    case 'figure': {
      const figure = fields.figure(field.name);
      const shown = typeof value === 'number' ? value : figure.min;
      return <FigureField {...figure} hint={hint} value={shown} onChange={onChange} />;
    }
    case 'check':
      return <CheckField label={field.label} checked={value === true} onChange={onChange} />;
    case 'choice': {
      const { none, options, addAt } = field;
      return (
        <SelectField
          {...fields.choice(field.name)}
          hint={addAt ? <Link href={addAt.href}>{addAt.word}</Link> : hint}
          value={typeof value === 'string' && value !== '' ? value : none === undefined ? null : ''}
          options={none === undefined ? options : [{ value: '', word: none }, ...options]}
          onChange={(chosen) => onChange(chosen === '' ? null : chosen)}
        />
      );
    }
    case 'lifts':
      return (
        <LiftsField
          {...fields.choice(field.name)}
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

function LiftsField(props: {
  label: string;
  error: string | null;
  lifts: readonly Lift[];
  onChange: (lifts: Lift[]) => void;
}) {
  const { label, error, lifts, onChange } = props;
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
      {error && <p className="field-error">{error}</p>}
    </fieldset>
  );
}
