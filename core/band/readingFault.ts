import type { BandReading } from './BandCurve.ts';

/** What is wrong with a band as typed: `reading` is the index of the reading at fault, null for the band itself. */
export interface ReadingFault {
  reading: number | null;
  field: 'restLengthM' | 'widthMm' | 'lengthM' | 'forceN';
  message: string;
}

/** The first fault that makes a band unfit to be fitted, or null. */
export function readingFault(band: {
  restLengthM: number;
  widthMm?: number | undefined;
  readings: readonly BandReading[];
}): ReadingFault | null {
  const { restLengthM, widthMm, readings } = band;
  if (!(restLengthM > 0 && restLengthM < Infinity)) {
    return {
      reading: null,
      field: 'restLengthM',
      message: `The rest length is ${restLengthM} m; it must be above 0.`,
    };
  }
  if (widthMm !== undefined && !(widthMm > 0 && widthMm < Infinity)) {
    return { reading: null, field: 'widthMm', message: `The width is ${widthMm} mm; it must be above 0.` };
  }
  for (const [index, { lengthM, forceN }] of readings.entries()) {
    const which = `Reading ${index + 1}`;
    if (!(lengthM > 0 && lengthM < Infinity)) {
      return {
        reading: index,
        field: 'lengthM',
        message: `${which}: the length is ${lengthM} m; it must be above 0.`,
      };
    }
    if (!(forceN >= 0 && forceN < Infinity)) {
      return {
        reading: index,
        field: 'forceN',
        message: `${which}: the force is ${forceN} N; it must be 0 or more.`,
      };
    }
    if (lengthM <= restLengthM && forceN > 0) {
      const message = `${which}: a length of ${lengthM} m with ${forceN} N is not above the rest length of ${restLengthM} m, where a band is slack.`;
      return { reading: index, field: 'lengthM', message };
    }
    if (lengthM > restLengthM && forceN === 0) {
      const message = `${which}: the force is 0 N at ${lengthM} m, beyond the rest length of ${restLengthM} m; it must be above 0.`;
      return { reading: index, field: 'forceN', message };
    }
  }
  return null;
}
