import type { EffectRange, EvidenceAnswer, EvidenceLine } from '#contract/evidence/evidenceReport.ts';

/** A line with its name and its effects in the unit that they are spoken in. */
export interface NamedLine {
  key: string;
  line: EvidenceLine;
  name: string;
  effect: EffectRange | null;
  naive: EffectRange | null;
}

/**
 * The lines of a view: for the club everybody, strongest middle first; for one lifter the club and their own. Variants are
 * many already, so that lifters stand in them only when one is asked for.
 */
export function shownLines({ question, lines }: EvidenceAnswer, lifterId: string | null): EvidenceLine[] {
  if (lifterId !== null) return lines.filter((line) => line.lifterId === null || line.lifterId === lifterId);
  const ofClub = lines.filter((line) => line.lifterId === null);
  if (question === 'variants') return ofClub;
  const ofLifters = lines.filter((line) => line.lifterId !== null);
  return [...ofClub, ...ofLifters.toSorted((a, b) => (b.effect?.value ?? 0) - (a.effect?.value ?? 0))];
}
