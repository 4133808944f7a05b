import type { EffectRange, EvidenceLine, Question } from '#contract/evidence/evidenceReport.ts';
import { signedText } from '#contract/words/signedText.ts';
import { capital } from './capital.ts';
import { counted } from './counted.ts';

/** How a line is spoken of: the club's unit of mass and height, and whose line it is, where it is one lifter's. */
export interface EvidenceVoice {
  massUnit: 'kg' | 'lb';
  lengthUnit: 'cm' | 'in';
  /** Whom it names first: "Ilse Vandermolen"; null: nobody, on a page that is about the club. */
  speaksOf: string | null;
  /** The variant as the coach calls it, where the line is about one. */
  variantName?: string;
}

const CM_AN_INCH = 2.54;
/** Kilograms or pounds gained in the gym that a sentence speaks of. */
const GAINED = 10;

/** What an effect lets one say: that it is there, that it leans that way, or nothing. */
export type Verdict = 'says' | 'leans' | 'cannotTell' | 'tooLittle';

/** The 95 % range leaves nought out, the 80 % range does, neither does, or there is no range. */
export function verdictOf({ effect }: Pick<EvidenceLine, 'effect'>): Verdict {
  if (effect === null) return 'tooLittle';
  if (effect.low95 > 0 || effect.high95 < 0) return 'says';
  return effect.low80 > 0 || effect.high80 < 0 ? 'leans' : 'cannotTell';
}

/** An effect and its ranges in the unit that it is spoken in: of 10 units gained, % for a unit of height, % for 10 points. */
export function spokenEffect(
  question: Question,
  effect: EffectRange,
  { lengthUnit }: EvidenceVoice,
): EffectRange {
  const told = (value: number) =>
    question === 'boxHeight'
      ? heightTold(value, lengthUnit)
      : question === 'bandShare'
        ? value
        : value * GAINED;
  const { value, low80, high80, low95, high95 } = effect;
  return {
    value: told(value),
    low80: told(low80),
    high80: told(high80),
    low95: told(low95),
    high95: told(high95),
  };
}

/** Percent compound: an inch is worth 2.54 centimetres of it. */
function heightTold(percentACm: number, unit: 'cm' | 'in'): number {
  return unit === 'cm' ? percentACm : 100 * Math.expm1(CM_AN_INCH * Math.log1p(percentACm / 100));
}

/** The same worth by the other unit of height, for whoever counts boxes in it. */
function otherUnit(percent: number, { lengthUnit }: EvidenceVoice): string {
  const inOther = 100 * Math.expm1(Math.log1p(percent / 100) * CM_AN_INCH ** (lengthUnit === 'cm' ? 1 : -1));
  return `${lengthUnit === 'cm' ? 'an inch' : 'a centimetre'} comes to ${figure(Math.abs(inOther))} %`;
}

/** One answer as a coach says it; where the data cannot tell, it says that. */
export function evidenceSentence(question: Question, line: EvidenceLine, voice: EvidenceVoice): string {
  const verdict = verdictOf(line);
  if (line.effect === null || verdict === 'tooLittle') return tooLittle[question](line);
  const told = spokenEffect(question, line.effect, voice);
  // Raw and equipped each have a carry-over of their own; what the question asks is their difference.
  const said = line.equipped === null ? sentences[question] : line.equipped ? inEquipment : raw;
  const who = voice.speaksOf === null || question === 'equipped' ? '' : `${voice.speaksOf}: `;
  return `${who}${said(told, verdict, voice)}`;
}

type Said = (told: EffectRange, verdict: Verdict, voice: EvidenceVoice) => string;

const carried =
  (what: (voice: EvidenceVoice) => string): Said =>
  (told, verdict, voice) => {
    const unit = voice.massUnit;
    const range = `${figure(told.low80)} to ${figure(told.high80)} ${unit}`;
    const gained = `${GAINED} ${unit} gained ${what(voice)}`;
    if (verdict === 'cannotTell')
      return `the data cannot tell what ${gained} was worth on the platform; anything from ${range} would fit what was logged.`;
    const value = `${figure(told.value)} ${unit}`;
    if (verdict === 'leans')
      return `${gained} probably went with about ${value} on the platform (most likely ${range}), but none at all is not ruled out.`;
    return `${gained} went with about ${value} on the platform (most likely ${range}).`;
  };

const inEquipment: Said = (...args) => begun(carried(() => 'in the gym by those who lift equipped')(...args));
const raw: Said = (...args) => begun(carried(() => 'in the gym by those who lift raw')(...args));

const sentences: Record<Question, Said> = {
  carryOver: (...args) => begun(carried(() => 'in the gym at a fixed setup')(...args), args[2].speaksOf),
  variants: (...args) =>
    begun(carried(({ variantName }) => `in the ${variantName ?? 'variant'}`)(...args), args[2].speaksOf),
  boxHeight(told, verdict, voice) {
    const unit = voice.lengthUnit === 'cm' ? 'centimetre' : 'inch';
    const range = `${figure(told.low80)} to ${figure(told.high80)} %`;
    if (verdict === 'cannotTell')
      return begun(
        `the data cannot tell what a ${unit} of box height is worth; anything from ${range} on the bar would fit what was logged.`,
        voice.speaksOf,
      );
    const word = told.value > 0 ? 'more' : 'less';
    const start = unit === 'inch' ? 'an inch' : 'a centimetre';
    const maybe = verdict === 'leans' ? ' probably' : '';
    return begun(
      `a box ${start} higher${maybe} allowed ${figure(Math.abs(told.value))} % ${word} on the bar with the same bands (most likely ${range}); ${otherUnit(told.value, voice)}.`,
      voice.speaksOf,
    );
  },
  bandShare(told, verdict, voice) {
    const range = `${figure(told.low80)} to ${figure(told.high80)} %`;
    if (verdict === 'cannotTell')
      return begun(
        `the data cannot tell whether more of the load in bands came with larger gains; for 10 points more, anything from ${range} of the lift from meet to meet would fit what was logged.`,
        voice.speaksOf,
      );
    const word = told.value > 0 ? 'larger' : 'smaller';
    const maybe = verdict === 'leans' ? ' probably' : '';
    return begun(
      `training blocks with 10 points more of the load in bands${maybe} came with gains that were ${word} by ${figure(Math.abs(told.value))} % of the lift (most likely ${range}).`,
      voice.speaksOf,
    );
  },
  equipped(told, verdict, voice) {
    const { massUnit } = voice;
    const range = `${figure(told.low80)} to ${figure(told.high80)} ${massUnit}`;
    if (verdict === 'cannotTell')
      return `The data cannot tell raw and equipped lifting apart: of ${GAINED} ${massUnit} gained in the gym, equipped lifters may have brought anything from ${figure(-told.low80)} ${massUnit} less to ${figure(told.high80)} ${massUnit} more of it to the platform than raw ones.`;
    const word = told.value > 0 ? 'more' : 'less';
    const maybe = verdict === 'leans' ? ' probably' : '';
    return `Of ${GAINED} ${massUnit} gained in the gym,${maybe} ${figure(Math.abs(told.value))} ${massUnit} ${word} reached the platform in equipment than raw (most likely ${range}).`;
  },
};

const soFar = ({ lifters, observations }: EvidenceLine, one: string, several = `${one}s`) =>
  `so far there ${observations === 1 ? 'is' : 'are'} ${counted(observations, one, several)} by ${counted(lifters, 'lifter')}`;

const tooLittle: Record<Question, (line: EvidenceLine) => string> = {
  carryOver: (line) =>
    `Too little to say: it takes 8 gains from meet to meet by 3 lifters, with the same gym setup before both meets; ${soFar(line, 'gain')}.`,
  variants: (line) => `Too little to say: it takes 8 gains by 3 lifters; ${soFar(line, 'gain')}.`,
  boxHeight: (line) =>
    `Too little to say: it takes 3 lifters who went hard off boxes of different heights with the same bands; ${soFar(line, 'hard lift off a box', 'hard lifts off a box')}.`,
  bandShare: (line) =>
    `Too little to say: it takes 8 training blocks from meet to meet by 3 lifters, not all with the same share of bands; ${soFar(line, 'block')}.`,
  equipped: (line) =>
    `Too little to say: it takes 8 gains by 3 lifters raw and as many equipped; ${soFar(line, 'gain')} in all.`,
};

/** A sentence begins with a capital where no name stands before it. */
function begun(text: string, speaksOf: string | null = null): string {
  return speaksOf === null ? capital(text) : text;
}

/** Two figures at most, a true minus. */
function figure(value: number): string {
  const text = signedText(value, { decimals: Math.abs(value) >= 9.95 ? 0 : 1 });
  return Number(text) === 0 ? '0' : text;
}
