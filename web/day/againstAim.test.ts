import { describe, expect, it } from 'vitest';
import type { OtherSetup } from '#contract/day/otherSetup.ts';
import { againstAim } from './againstAim.ts';

const other: OtherSetup = {
  set: { bands: [], chains: [] },
  barKg: 100,
  shareAtBottom: 0.832,
  shareAtLockout: 0.402,
  percentages: [
    { basis: 'bar', share: 0.511 },
    { basis: 'lockout', share: 0.744 },
  ],
  aimedMps: 0.587,
  speaksFor: [],
};

describe('what another proposal gives where the aim looks', () => {
  it('sets every percentage beside the one that was asked for on the same basis', () => {
    const aim = {
      by: 'percent' as const,
      targets: [
        { basis: 'lockout' as const, share: 0.75 },
        { basis: 'bar' as const, share: 0.5 },
      ],
    };
    expect(againstAim(aim, other)).toMatch(
      /74 % at lockout \(aim 75\), 51 % on the bar \(aim 50\); 83 %.*40 %/,
    );
  });

  it('sets shares of strength beside those asked, bottom first', () => {
    const aim = { by: 'capability' as const, bottomShare: 0.88, lockoutShare: 0.27 };
    expect(againstAim(aim, other)).toMatch(/83 %.*bottom \(aim 88\).*40 % at lockout \(aim 27\)/);
  });

  it('sets the speed beside its zone', () => {
    const zone = { by: 'speed' as const, fromMps: 0.6, toMps: 0.7 };
    expect(againstAim({ ...zone, of: 'firstRep' }, other)).toMatch(
      /^First rep 0\.59 m\/s \(aim 0\.60 to 0\.70\)/,
    );
    expect(againstAim({ ...zone, of: 'set' }, other)).toMatch(/^Whole set 0\.59 m\/s/);
  });
});
