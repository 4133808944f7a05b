import { wrongDateSentence } from '#contract/records/wrongDateSentence.ts';
import { dateText } from '#contract/words/dateText.ts';

/** What is wrong with a text, beside what only others know of it. */
export function wrongText(props: {
  label: string;
  value: string;
  required?: boolean | undefined;
  maxLength?: number | undefined;
  today?: string | undefined;
  type?: 'text' | 'date' | 'time';
}): string | null {
  const { label, value, required, maxLength, today, type } = props;
  if (required && value.trim() === '') return `${label} is needed.`;
  if (maxLength !== undefined && value.length > maxLength) {
    return `${label} has ${value.length} letters; at most ${maxLength} are kept.`;
  }
  return type !== 'date' || value === '' ? null : wrongDateSentence(label, value, today ?? null, dateText);
}
