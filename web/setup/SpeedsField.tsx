import { useState } from 'react';
import { TextField } from '#web/parts/TextField.tsx';

const mostMps = 5;

/** Speeds of a set in m/s: one for each rep made, or a single one, that of the fastest rep. */
export function SpeedsField(props: {
  label: string;
  speedsMps: readonly number[];
  made: number;
  onChange: (speedsMps: number[]) => void;
}) {
  const { label, made, onChange } = props;
  const [text, setText] = useState(props.speedsMps.join(', '));
  return (
    <TextField
      label={`${label}, m/s`}
      value={text}
      hint={made > 1 ? 'The fastest rep, or one a rep: 0.62, 0.58.' : undefined}
      error={wrongSpeeds(label, text, made)}
      onChange={(next) => {
        setText(next);
        if (wrongSpeeds(label, next, made) === null) onChange(speedsOf(next));
      }}
    />
  );
}

/** What is wrong with typed speeds, in one sentence; null where nothing is. */
export function wrongSpeeds(label: string, text: string, made: number): string | null {
  const speeds = speedsOf(text);
  const wrong = speeds.find((mps) => !(mps >= 0 && mps <= mostMps));
  if (Number.isNaN(wrong))
    return `${label} is "${text.trim()}"; write it as 0.62, or 0.62, 0.58 for two reps.`;
  if (wrong !== undefined) return `${label} is ${wrong} m/s; allowed is 0 to ${mostMps} m/s.`;
  if (speeds.length > 1 && speeds.length !== made)
    return `${label} has ${speeds.length} figures; give one, or one for each rep made (${made}).`;
  return null;
}

/** "0.62, 0.58", "0.62 0.58" and "0,62; 0,58" alike. */
export function speedsOf(text: string): number[] {
  const apart = text.includes('.') ? /[,;\s]+/ : /;\s*|,\s+|\s+/;
  return text
    .split(apart)
    .filter((figure) => figure !== '')
    .map((figure) => Number(figure.replace(',', '.')));
}
