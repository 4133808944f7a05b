import type { PlanCaution } from '#contract/day/explainedBar.ts';
import type { KnownHow } from '#contract/records/knownHow.ts';
import type { EffortWords } from './effortWords.ts';
import type { WrittenBar } from './wallBar.ts';

/** Discs of one mass on one side, heaviest nearest the middle. */
export interface DiscsOnSide {
  /** As written on the face, in kg. */
  faceMassKg: number;
  count: number;
  diameterM: number | null;
  thicknessM: number | null;
}

/**
 * A load at one height as it is written: "181", "174 to 188", "35 %" of what can be held there; at lockout under bands that
 * have numbers by habit, what these would say: "by habit 190 kg".
 */
export interface WrittenLoad {
  load: string;
  known: KnownHow;
  interval: string;
  share: string;
  habit: string;
}

/** A caution and how it is said in this view. */
export interface SaidCaution {
  caution: PlanCaution;
  sentence: string;
}

/** One step of the work: so many sets of so many reps with this bar. */
export interface WrittenStep extends WrittenBar {
  sets: number;
  reps: number;
  aSide: string;
  rest: string;
  effort: EffortWords;
}

/** A load picture small enough for a row: forces at the bar, in N, from the bottom up. */
export type SmallLoadPoint = { zM: number; barN: number; bandN: number; chainN: number; totalN: number };

/** All that screen and paper say of one lifter's bar, in the units of the view. */
export interface LifterLine {
  lifterId: string;
  order: number;
  name: string;
  start: string;
  /** What the box is built of where it takes more than the box alone: "Box 36 and Mat 2.5"; else empty. */
  stack: string;
  /** The weight of the main step as loaders call it, large. */
  bar: string;
  /** Where the true mass reads otherwise: "109.9 kg weighed"; else empty. */
  trueBar: string;
  barByCoach: boolean;
  /** Assumed where the bar or a disc of it counts as marked. */
  barKnown: KnownHow;
  perSide: readonly DiscsOnSide[];
  /** Figures on the faces in kg, from the inside out: "2 × 25 + 10". */
  aSide: string;
  /** Bands and chains with their hookups, one line each; empty: straight weight. */
  hung: readonly string[];
  /** What changes on the bar after the lifter before: "64-A on"; for whoever lifts first what to hang: "hang 64-A first". */
  changes: string;
  steps: readonly WrittenStep[];
  bottom: WrittenLoad;
  lockout: WrittenLoad;
  /** "50 % bar, 76 % lockout". */
  percentages: string;
  reference: string;
  /** Of the main step. */
  effort: EffortWords;
  picture: readonly SmallLoadPoint[];
  assumed: readonly SaidCaution[];
  cautions: readonly SaidCaution[];
}

/** A lifter's line on paper, with what the coach wrote for this lifter. */
export interface LifterOnSheet extends LifterLine {
  note: string;
  /** What this paper must own up to of what happened since, about this lifter. */
  since: readonly string[];
}

/** One page: a rack and its lifters in lifting order. */
export interface RackSheet {
  /** The same for all pages of a rack of a group. */
  key: string;
  groupId: string;
  /** Pages among which the lifters of this rack are split. */
  parts: number;
  club: string;
  invented: boolean;
  date: string;
  group: string;
  rack: string;
  unit: 'kg' | 'lb';
  work: string;
  /** How the coach calls the day; empty: by its date alone. */
  title: string;
  /** What the coach wrote for everybody who reads the sheet; empty: nothing. */
  note: string;
  lifters: readonly LifterOnSheet[];
  /** One sentence each, the gravest first. */
  cautions: readonly string[];
  /** What was not measured, one sentence a kind. */
  assumed: readonly string[];
  madeBy: string;
  /** The day was changed after this was worked out: paper must say so. */
  changedSince: boolean;
  /** What the paper says otherwise than the club would now, a sentence each. */
  since: readonly string[];
  page: number;
  pages: number;
}
