import type { EvidenceReport } from '#contract/evidence/evidenceReport.ts';

/** The report with the lines of the club and of one lifter. */
export function evidenceForLifter(report: EvidenceReport, lifterId: string): EvidenceReport {
  const isAbout = (line: { lifterId: string | null }) => line.lifterId === null || line.lifterId === lifterId;
  return {
    ...report,
    answers: report.answers.map((answer) => ({ ...answer, lines: answer.lines.filter(isAbout) })),
  };
}
