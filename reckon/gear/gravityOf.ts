import type { ClubRecords } from '#contract/records/allKinds.ts';
import type { Club } from '#contract/records/club.ts';
import { localGravity, STANDARD_GRAVITY_MPS2 } from '#core/load/localGravity.ts';

/** Local gravity (m/s2) where the club says where it is, else standard gravity. */
export function gravityOf({ club }: Pick<ClubRecords, 'club'>): number {
  return localGravityOf(club[0]) ?? STANDARD_GRAVITY_MPS2;
}

/** True where gravity is the standard one for want of a latitude or a height above the sea. */
export function isGravityAssumed({ club }: Pick<ClubRecords, 'club'>): boolean {
  return localGravityOf(club[0]) === null;
}

function localGravityOf(club: Partial<Club> | undefined): number | null {
  const { latitudeDeg = null, heightAboveSeaM = null } = club ?? {};
  return latitudeDeg === null || heightAboveSeaM === null ? null : localGravity(latitudeDeg, heightAboveSeaM);
}
