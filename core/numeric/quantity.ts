declare const unit: unique symbol;

/**
 * A number of one unit. A number of another unit is refused in its place: a force as `barKg`, `lnTotal` and `movedBodyKg` exchanged.
 * A plain number passes, and what is reckoned from such numbers is plain again: in a formula the names carry the units, and nothing
 * has to be converted or cast. At run time nothing is left of it.
 *
 * It stands where two units meet in one signature or one record and a mix-up would be silent; not wherever a number has a unit.
 */
type NumberOf<Unit extends string> = number & { readonly [unit]?: Unit };

export type Kg = NumberOf<'kg'>;
export type Newton = NumberOf<'N'>;
/** A part of something, 1 all of it; a percentage is a hundred of these. */
export type Share = NumberOf<'1'>;
/** ln of a mass in kg: strength as a straight total mass. */
export type LnKg = NumberOf<'ln kg'>;
/** ln of a ratio: a surplus of strength, what is lost of it, its spread. */
export type LnRatio = NumberOf<'ln 1'>;
