import type { ComponentType } from 'react';
import { BandsPage } from './bands/BandsPage.tsx';
import { DonePage } from './done/DonePage.tsx';
import { HeightPage } from './height/HeightPage.tsx';
import { RacksPage } from './racks/RacksPage.tsx';
import { ClubPage } from './settings/ClubPage.tsx';
import type { Gear } from './state/useGear.ts';
import { BoxesPage } from './tables/BoxesPage.tsx';
import { ChainsPage } from './tables/ChainsPage.tsx';
import { IronPage } from './tables/IronPage.tsx';

interface GearPlace {
  path: string;
  /** Pages of single records lie below it. */
  below?: string;
  /** The word of its link. */
  word: string;
  Page: ComponentType<{ gear: Gear }>;
}

/** The gear screen from left to right; its links and addresses follow from it. */
export const gearPlaces: readonly GearPlace[] = [
  { path: '/', below: '/bands/*', word: 'Bands', Page: BandsPage },
  { path: '/height', word: 'On each rack', Page: HeightPage },
  { path: '/racks', below: '/racks/*', word: 'Racks', Page: RacksPage },
  { path: '/iron', word: 'Bars and discs', Page: IronPage },
  { path: '/chains', word: 'Chains', Page: ChainsPage },
  { path: '/boxes', word: 'Boxes and mats', Page: BoxesPage },
  { path: '/club', word: 'Club', Page: ClubPage },
  { path: '/done', word: 'What was done', Page: DonePage },
];
