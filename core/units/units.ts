/** What people type and read: a mass, a length or a force. */
export type Quantity = 'mass' | 'length' | 'force';

export type Unit = 'kg' | 'lb' | 'm' | 'cm' | 'mm' | 'in' | 'ft' | 'N' | 'kgf' | 'lbf';

/**
 * One of each unit in SI (kg, m or N), exact: NIST SP 811 (2008), appendix B; kgf and lbf by standard gravity,
 * 9.80665 m/s2 (CGPM 1901).
 */
export const units: Record<Unit, { quantity: Quantity; si: number }> = {
  kg: { quantity: 'mass', si: 1 },
  lb: { quantity: 'mass', si: 0.45359237 },
  m: { quantity: 'length', si: 1 },
  cm: { quantity: 'length', si: 0.01 },
  mm: { quantity: 'length', si: 0.001 },
  in: { quantity: 'length', si: 0.0254 },
  ft: { quantity: 'length', si: 0.3048 },
  N: { quantity: 'force', si: 1 },
  kgf: { quantity: 'force', si: 9.80665 },
  lbf: { quantity: 'force', si: 4.4482216152605 },
};

/** A value given in `unit`, in SI. */
export function toSi(value: number, unit: Unit): number {
  return value * units[unit].si;
}

/** An SI value in `unit`. */
export function fromSi(valueSi: number, unit: Unit): number {
  return valueSi / units[unit].si;
}
