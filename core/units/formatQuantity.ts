import { fromSi, type Unit } from './units.ts';

/**
 * An SI value (kg, m or N) as people read it, always with its unit: `102.5 kg`, `225 lb`, `1.04 m`, `14.25 in`. What
 * was typed comes back as typed: masses to 0.01 kg or lb, lengths to 1 mm or 0.01 in, forces to 1 N or 0.1 kgf or lbf,
 * without idle zeros. `decimals` asks for a fixed number of places instead.
 */
export function formatQuantity(valueSi: number, unit: Unit, decimals?: number): string {
  const value = fromSi(valueSi, unit);
  const text =
    decimals === undefined ? String(Number(value.toFixed(DECIMALS[unit]))) : value.toFixed(decimals);
  return `${withoutMinusZero(text)} ${unit}`;
}

const DECIMALS: Record<Unit, number> = {
  kg: 2,
  lb: 2,
  m: 3,
  cm: 1,
  mm: 0,
  in: 2,
  ft: 2,
  N: 0,
  kgf: 1,
  lbf: 1,
};

function withoutMinusZero(text: string): string {
  return /^-0(\.0*)?$/.test(text) ? text.slice(1) : text;
}
