/** Units in which a coach reads masses and lengths. */
export type MassUnit = 'kg' | 'lb';
export type LengthUnit = 'cm' | 'in';
