import type { ClubRecords } from '#contract/records/allKinds.ts';
import { bandPull } from '#core/rig/bandPull.ts';
import { formatQuantity } from '#core/units/formatQuantity.ts';
import { fromSi } from '#core/units/units.ts';
import type { Units } from '#web/parts/ViewUnits.tsx';
import type { Trial } from './Trial.ts';
import { riggedBands } from './trialLoad.ts';
import type { TrialResult } from './trialResult.ts';

/** One thing to know about a trial; `stop` is to be looked at before anybody lifts. */
export interface Finding {
  stop: boolean;
  sentence: string;
}

/** What to know about a trial, as a coach says it. */
export function trialFindings(
  club: ClubRecords,
  trial: Trial,
  result: TrialResult,
  units: Pick<Units, 'mass' | 'length'>,
): Finding[] {
  const { heights, curve, rep, strength } = result;
  const height = (m: number) => formatQuantity(m, units.length, units.length === 'cm' ? 0 : 1);
  const found: Finding[] = [];
  const say = (stop: boolean, sentence: string) => found.push({ stop, sentence });
  if (rep?.made === false)
    say(true, `This bar stops at ${height(rep.slowest.zM)}: too heavy by what is known of this lifter.`);
  if (curve.slackBelowM !== null) {
    say(false, `The bands are slack below ${height(curve.slackBelowM)}: the bottom is straight weight.`);
  }
  const [first] = curve.points;
  if (first && first.bandN < -1) {
    say(
      false,
      `At the bottom the bands carry ${written(-first.bandN)}: only the rest is on the lifter there.`,
    );
  }
  for (const finding of bandFindings(club, trial, heights)) say(finding.stop, finding.sentence);
  if (heights.from === 'estimated')
    say(false, 'Bar heights are estimated: measure them, and the band tension here is right.');
  if (strength === null)
    say(false, 'No best of this lift is written down, so nothing is said about what this lifter can hold.');
  return found;

  function written(forceN: number): string {
    return `${Math.round(fromSi(forceN / result.load.gravityMps2, units.mass))} ${units.mass}`;
  }
}

function bandFindings(
  club: ClubRecords,
  trial: Trial,
  heights: { bottomM: number; lockoutM: number },
): Finding[] {
  const safe = club.club[0]?.safeStretchRatio ?? 2.5;
  const ends = [heights.bottomM, heights.lockoutM];
  const found: Finding[] = [];
  const onAnchor = new Map<string, number>();
  for (const { bandPairId, hookupId } of trial.bands) {
    const label = club.bandPair.find((pair) => pair.id === bandPairId)?.label ?? bandPairId;
    const rigged = riggedBands(club, bandPairId, hookupId);
    const pulls = rigged.map((band) => bandPull(band, [], heights.bottomM, heights.lockoutM));
    const stretch = Math.max(1, ...pulls.flatMap((pull) => ends.map((zM) => pull.stretch(zM))));
    if (stretch > safe) {
      found.push({
        stop: true,
        sentence: `Band pair ${label} is stretched to ${stretch.toFixed(2)} times its length; ${safe} is allowed here.`,
      });
    }
    if (rigged.some((band) => band.curves.loading.known === 'notMeasured')) {
      found.push({
        stop: false,
        sentence: `Band pair ${label} was never measured: its pull is a guess from its width.`,
      });
    } else if (pulls.some((pull) => ends.some((zM) => pull.extrapolated(zM)))) {
      found.push({
        stop: false,
        sentence: `Band pair ${label} is stretched beyond its longest reading: hang it longer once.`,
      });
    }
    const anchorId = club.hookup.find((hookup) => hookup.id === hookupId)?.anchorId;
    const most = Math.max(0, ...pulls.flatMap((pull) => ends.map((zM) => pull.anchorN(zM))));
    if (anchorId) onAnchor.set(anchorId, (onAnchor.get(anchorId) ?? 0) + most);
  }
  return [...found, ...anchorFindings(club, onAnchor)];
}

function anchorFindings(club: ClubRecords, onAnchor: Map<string, number>): Finding[] {
  return [...onAnchor].flatMap(([anchorId, pullN]) => {
    const anchor = club.anchor.find((candidate) => candidate.id === anchorId);
    if (!anchor) return [];
    if (anchor.ratedLoadN === null) {
      return [{ stop: true, sentence: `Nobody has written down what ${anchor.label} may carry.` }];
    }
    if (pullN <= anchor.ratedLoadN) return [];
    return [
      {
        stop: true,
        sentence: `${anchor.label} would carry ${Math.round(pullN)} N; rated for ${Math.round(anchor.ratedLoadN)} N.`,
      },
    ];
  });
}
