import { gridded } from '../numeric/gridded.ts';
import type { Kg, Newton } from '../numeric/quantity.ts';
import { bandPull } from '../rig/bandPull.ts';
import { chainBreaksM, hangingKg, liftedPerMetreKg } from '../rig/chainHang.ts';
import { hungPull } from '../rig/hungPull.ts';
import type { Load } from './Load.ts';

/** What acts at the bar at one height; verticals down positive, fore-aft + forward. */
export interface LoadParts {
  barN: Newton;
  bandN: Newton;
  chainN: Newton;
  totalN: Newton;
  foreAftN: Newton;
}

/** A load made ready for many evaluations. */
export interface CompiledLoad {
  load: Load;
  at(zM: number): LoadParts;
  totalN(zM: number): Newton;
  bandN(zM: number): Newton;
  foreAftN(zM: number): Newton;
  /** Standard deviation of the vertical band pull; different bands err independently. */
  bandSdN(zM: number): Newton;
  hangingKg(zM: number): Kg;
  liftedPerMetreKg(zM: number): number;
  /** Heights between bottom and lockout where the load has a kink, ascending. */
  breaksM: readonly number[];
}

/**
 * Prepares `Load(z) = barKg g + sum T_v(z) + sum m_chain(z) g` (model, section 4).
 * Requires `lockoutM > bottomM`; throws RangeError otherwise.
 */
export function compileLoad(load: Load): CompiledLoad {
  const { bottomM, lockoutM } = load;
  if (!(lockoutM > bottomM)) throw new RangeError(`lockoutM ${lockoutM} must be above bottomM ${bottomM}`);
  const path = [...load.path].sort((a, b) => a.zM - b.zM);
  const bands = load.bands.map((band) => bandPull(band, path, bottomM, lockoutM));
  const hung = load.hungBands.map((band) => hungPull(band, bottomM, lockoutM));
  const pulls = [...bands, ...hung];

  const bandN = (zM: number) => {
    let sum = 0;
    for (const pull of pulls) sum += pull.downN(zM);
    return sum;
  };
  const hanging = (zM: number) => {
    let sum = 0;
    for (const chain of load.chains) sum += hangingKg(chain, zM);
    return sum;
  };
  const breaks = [
    ...pulls.flatMap((pull) => pull.breaksM),
    ...load.chains.flatMap(chainBreaksM),
    ...path.map((p) => p.zM),
    ...load.bands.map((band) => band.anchor.zM),
  ].filter((z) => z > bottomM && z < lockoutM);

  return withBarOn(load, {
    bandN,
    foreAftN: (zM) => bands.reduce((sum, pull) => sum + pull.foreAftN(zM), 0),
    bandSdN: (zM) => Math.hypot(...pulls.map((pull) => pull.downSdN(zM))),
    hangingKg: hanging,
    liftedPerMetreKg(zM) {
      let sum = 0;
      for (const chain of load.chains) sum += liftedPerMetreKg(chain, zM);
      return sum;
    },
    breaksM: [...new Set(breaks)].sort((a, b) => a - b),
  });
}

/** The same bands and chains with another bar, without compiling again. */
export function withBarKg(compiled: CompiledLoad, barKg: Kg): CompiledLoad {
  return withBarOn({ ...compiled.load, barKg }, compiled);
}

/**
 * The same with its pulls read off `cells` even cells from bottom to lockout: a fraction of the work where reps are simulated
 * by the hundred. A kink is rounded off within its cell.
 */
export function griddedLoad(compiled: CompiledLoad, cells: number): CompiledLoad {
  const { bottomM, lockoutM, bands, hungBands, chains } = compiled.load;
  const read = (f: (zM: number) => number) => gridded(f, bottomM, lockoutM, cells);
  const pulls = bands.length + hungBands.length > 0 ? { bandN: read(compiled.bandN) } : {};
  const hanging =
    chains.length > 0
      ? { hangingKg: read(compiled.hangingKg), liftedPerMetreKg: read(compiled.liftedPerMetreKg) }
      : {};
  return withBarOn(compiled.load, { ...compiled, ...pulls, ...hanging });
}

function withBarOn(load: Load, pulls: Omit<CompiledLoad, 'load' | 'at' | 'totalN'>): CompiledLoad {
  const barN = load.barKg * load.gravityMps2;
  return {
    ...pulls,
    load,
    totalN: (zM) => barN + pulls.bandN(zM) + pulls.hangingKg(zM) * load.gravityMps2,
    at(zM) {
      const bandN = pulls.bandN(zM);
      const chainN = pulls.hangingKg(zM) * load.gravityMps2;
      return { barN, bandN, chainN, totalN: barN + bandN + chainN, foreAftN: pulls.foreAftN(zM) };
    },
  };
}
