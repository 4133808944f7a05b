/** All that one picture of a rep shows, in SI; `LoadPoint`s and `RepSample`s of the core fit as they are. */
export interface HeightScene {
  title: string;
  bottomM: number;
  lockoutM: number;
  rack: RackScene;
  load: LoadScene;
  /** Null where nothing is known of what the lifter can do. */
  speed: SpeedScene | null;
}

/** The rack seen from the side: x fore-aft, + to the lifter's front, 0 under the bar at the start. */
export interface RackScene {
  anchors: readonly { xM: number; zM: number }[];
  bands: readonly {
    label: string;
    way: 'single' | 'doubled' | 'choked';
    widthMm: number;
    xM: number;
    zM: number;
  }[];
  /** Fore-aft place of the bar by height; empty: straight up. */
  path: readonly { zM: number; xM: number }[];
  boxHeightM: number | null;
  benchHeightM: number | null;
}

export interface LoadScene {
  points: readonly { zM: number; barN: number; bandN: number; chainN: number; totalN: number; sdN: number }[];
  /** What this lifter can hold still at the bar at each height, with its 95 % interval; empty where unknown. */
  held: readonly { zM: number; heldN: number; lowN: number; highN: number }[];
}

export interface SpeedScene {
  samples: readonly { zM: number; speedMps: number }[];
  slowest: { zM: number; speedMps: number };
  made: boolean;
  durationS: number;
}

/** The same horizontal reach for every picture that stands beside another. */
export interface SharedReach {
  topM: number;
  loadToN: number;
  speedToMps: number;
}

/** How far beyond the heaviest load the strength line may stretch the pane before it is cut. */
const strengthRoom = 2.4;

/** Reach of the axes that holds all scenes; strength is shown up to a share beyond the heaviest load. */
export function sharedReach(scenes: readonly HeightScene[]): SharedReach {
  const heaviestN = Math.max(
    ...scenes.flatMap((scene) => scene.load.points.map((p) => p.totalN + 2 * p.sdN)),
  );
  const heldN = Math.max(0, ...scenes.flatMap((scene) => scene.load.held.map((p) => p.highN)));
  return {
    // Anchors that hold nothing do not stretch the picture.
    topM:
      Math.max(...scenes.map((scene) => Math.max(scene.lockoutM, ...scene.rack.bands.map((b) => b.zM)))) +
      0.06,
    loadToN: Math.max(heaviestN * 1.04, Math.min(heldN * 1.02, heaviestN * strengthRoom)),
    speedToMps: Math.max(0.5, ...scenes.flatMap((s) => s.speed?.samples.map((p) => p.speedMps) ?? [])) * 1.05,
  };
}

/** The reach that holds both. */
export function widerReach(a: SharedReach, b: SharedReach): SharedReach {
  return {
    topM: Math.max(a.topM, b.topM),
    loadToN: Math.max(a.loadToN, b.loadToN),
    speedToMps: Math.max(a.speedToMps, b.speedToMps),
  };
}
