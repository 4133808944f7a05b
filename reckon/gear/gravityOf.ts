import type { ClubRecords } from '#contract/records/allKinds.ts';
import { localGravity, STANDARD_GRAVITY_MPS2 } from '#core/load/localGravity.ts';

/** Local gravity (m/s2) where the club says where it is, else standard gravity. */
export function gravityOf({ club }: Pick<ClubRecords, 'club'>): number {
  const { latitudeDeg = null, heightAboveSeaM = null } = club[0] ?? {};
  return latitudeDeg === null || heightAboveSeaM === null
    ? STANDARD_GRAVITY_MPS2
    : localGravity(latitudeDeg, heightAboveSeaM);
}
