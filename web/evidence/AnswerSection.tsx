import type { EvidenceAnswer, EvidenceLine } from '#contract/evidence/evidenceReport.ts';
import { evidenceSentence, spokenEffect } from '#contract/words/evidenceSentence.ts';
import { trapSentence } from '#contract/words/trapSentence.ts';
import { variantText } from '#contract/words/variantText.ts';
import { RangeRows } from '#web/charts/RangeRows.tsx';
import { MeasuredWidth } from '#web/parts/MeasuredWidth.tsx';
import { useUnits } from '#web/parts/ViewUnits.tsx';
import { AnswerTable } from './AnswerTable.tsx';
import { lineName, measureText, questionText } from './evidenceWords.ts';
import { sharedSentence } from './sharedSentence.ts';
import { type NamedLine, shownLines } from './shownLines.ts';

/** One question: its sentence first, the picture, the numbers, the traps. */
export function AnswerSection(props: {
  answer: EvidenceAnswer;
  /** Null: the club, with everybody in it. */
  lifterId: string | null;
  /** Whose answer it is all together; empty: the whole club's. */
  label: string;
  nameOf: (lifterId: string) => string;
}) {
  const { answer, lifterId, label, nameOf } = props;
  const { question, traps } = answer;
  const units = useUnits();
  const nameOfLine = (line: EvidenceLine) => (line.lifterId === null ? null : nameOf(line.lifterId));
  const voiceOf = (line: EvidenceLine) => ({
    massUnit: units.mass,
    lengthUnit: units.length,
    speaksOf: nameOfLine(line) ?? (lifterId === null ? null : 'The whole club'),
    ...(line.variant && { variantName: variantText(line.variant) }),
  });
  const lines: NamedLine[] = shownLines(answer, lifterId).map((line, index) => ({
    key: `${index}`,
    line,
    name: lineName(question, line, nameOfLine(line), label),
    effect: line.effect && spokenEffect(question, line.effect, voiceOf(line)),
    naive: line.naive && spokenEffect(question, line.naive, voiceOf(line)),
  }));
  const drawn = lines.flatMap(({ key, name, line, effect }) =>
    effect ? [{ key, name: nameInPicture(name, line), isClub: line.lifterId === null, ...effect }] : [],
  );
  const title = questionText(question, units);
  const shared = sharedSentence(answer, lifterId, nameOf, label || undefined);
  const measure = measureText(question, units);
  return (
    <section className="stack evidence-answer paper-whole" aria-labelledby={`evidence-${question}`}>
      <h2 id={`evidence-${question}`}>{title}</h2>
      <div className="stack tight evidence-said">
        {shared !== null && lifterId !== null && <p>{shared}</p>}
        {saidOf(answer, lifterId).map((line, index) => (
          <p key={index} className={lifterId !== null && line.lifterId === null ? 'quiet' : undefined}>
            {unbroken(evidenceSentence(question, line, voiceOf(line)))}
          </p>
        ))}
        {shared !== null && lifterId === null && <p className="quiet">{shared}</p>}
        {lifterId !== null &&
          question !== 'equipped' &&
          !answer.lines.some((line) => line.lifterId === lifterId) && (
            <p className="quiet">{nameOf(lifterId)} has nothing in this answer yet.</p>
          )}
      </div>
      {drawn.length > 0 && (
        <div className="evidence-both">
          <MeasuredWidth>
            {(widthPx) => (
              <RangeRows
                label={`${title} ${measure}`}
                rows={drawn}
                axis={measure}
                rule={question === 'carryOver' || question === 'variants' ? allOfIt(units.mass) : undefined}
                widthPx={widthPx}
              />
            )}
          </MeasuredWidth>
          <AnswerTable label={title} question={question} measure={measure} lines={lines} />
        </div>
      )}
      <details className="fold evidence-traps" open={question === 'carryOver'}>
        <summary>What may fool us here</summary>
        <dl>
          {traps.map(trapSentence).map(({ name, text }) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{unbroken(text)}</dd>
            </div>
          ))}
        </dl>
      </details>
    </section>
  );
}

/** A number and its unit stay on one line. */
function unbroken(text: string): string {
  return text.replaceAll(/(\d) (kg|lb|%)/g, '$1\u00a0$2');
}

const allOfIt = (mass: string) => ({ value: 10, word: `all of it: ${mass} for ${mass}` });

/** The lines that are spoken: of a lifter their own and the club's; of variants the three with most gains. */
function saidOf(answer: EvidenceAnswer, lifterId: string | null): EvidenceLine[] {
  const { question, lines } = answer;
  const ofClub = lines.filter((line) => line.lifterId === null);
  const own = lifterId === null ? [] : shownLines(answer, lifterId).filter((line) => line.lifterId !== null);
  if (question === 'equipped') return ofClub.filter((line) => line.effect !== null || line.equipped === null);
  if (question !== 'variants') return [...own, ...ofClub.slice(0, 1)];
  const telling = ofClub.filter(({ effect }) => effect !== null);
  return own.length > 0 ? own.slice(0, 3) : (telling.length > 0 ? telling : ofClub).slice(0, 3);
}

/** A lifter's line of a variant stands under that variant's own. */
function nameInPicture(name: string, line: EvidenceLine): string {
  return line.variant !== null && line.lifterId !== null ? `${name}, ${variantText(line.variant)}` : name;
}
