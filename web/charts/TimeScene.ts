import type { Belief } from '#contract/strength/strengthEstimate.ts';

/** A set where it acted: at its date, at the straight bar that it stands for. */
export interface SetMark {
  key: string;
  on: string;
  straightKg: number;
  /** `atLeast`: made; `lessThan`: missed; `near`: its speed or the reps left say nearly how much. */
  says: 'atLeast' | 'lessThan' | 'near';
  /** Hardly believed: shown, with a ring. */
  doubted: boolean;
  /** The record of its exact setup on its day or since. */
  record: boolean;
  /** What set it was, in words. */
  words: string;
}

/** Everything that the picture of strength over time shows; masses in kg, dates as kept. */
export interface TimeScene {
  /** "Strength of Ilse in the squat" */
  title: string;
  /** The first day shown; null: that of the first set. */
  from: string | null;
  history: readonly ({ on: string } & Belief)[];
  marks: readonly SetMark[];
  meets: readonly { on: string; place: string }[];
  bodyMasses: readonly { on: string; massKg: number }[];
}

/** A kept date as a point of time. */
export function timeOf(on: string): number {
  return Date.parse(`${on}T00:00:00Z`);
}

/** The part of a scene from a date on; the course begins one point earlier, so that its line reaches the edge. */
export function sceneFrom(scene: TimeScene, from: string | null): TimeScene {
  if (from === null) return scene;
  const since = <Dated extends { on: string }>(list: readonly Dated[]) => list.filter(({ on }) => on >= from);
  const first = scene.history.findIndex(({ on }) => on >= from);
  return {
    ...scene,
    from,
    history: first < 0 ? scene.history.slice(-1) : scene.history.slice(Math.max(0, first - 1)),
    marks: since(scene.marks),
    meets: since(scene.meets),
    bodyMasses: since(scene.bodyMasses),
  };
}
