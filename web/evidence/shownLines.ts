import type { EffectRange, EvidenceAnswer, EvidenceLine } from '#contract/evidence/evidenceReport.ts';

/** A line with its name and its effects in the unit that they are spoken in. */
export interface NamedLine {
  key: string;
  line: EvidenceLine;
  name: string;
  effect: EffectRange | null;
  naive: EffectRange | null;
}

/** Figures nearer than this share of the club's 95 % range are the same to the eye and to the coach. */
const sameWithin = 0.02;

/**
 * The lines of a view: for the club everybody who differs from it, strongest middle first; for one lifter the club and their
 * own. Variants are many already, so that lifters stand in them only when one is asked for.
 */
export function shownLines(answer: EvidenceAnswer, lifterId: string | null): EvidenceLine[] {
  const shared = new Set(sharedLines(answer));
  const lines = answer.lines.filter((line) => !shared.has(line));
  if (lifterId !== null) return lines.filter((line) => line.lifterId === null || line.lifterId === lifterId);
  const ofClub = lines.filter((line) => line.lifterId === null);
  if (answer.question === 'variants') return ofClub;
  const ofLifters = lines.filter((line) => line.lifterId !== null);
  return [...ofClub, ...ofLifters.toSorted((a, b) => (b.effect?.value ?? 0) - (a.effect?.value ?? 0))];
}

/** Lifters' lines that say what the whole club's says: their own logs tell no difference. */
export function sharedLines({ question, lines }: EvidenceAnswer): EvidenceLine[] {
  const club = lines.find(({ lifterId, lift }) => lifterId === null && lift === null)?.effect;
  if (!club || question === 'variants') return [];
  const within = sameWithin * (club.high95 - club.low95);
  return lines.filter(
    ({ lifterId, effect }) =>
      lifterId !== null &&
      effect !== null &&
      figures.every((figure) => Math.abs(effect[figure] - club[figure]) <= within),
  );
}

const figures = ['value', 'low80', 'high80', 'low95', 'high95'] as const;
