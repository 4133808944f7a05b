/** What was made, and the processor's own time for it, which a machine with other work tells apart from waiting. */
export function timed<Made>(make: () => Made): { made: Made; ms: number } {
  const before = process.cpuUsage();
  const made = make();
  const { user, system } = process.cpuUsage(before);
  return { made, ms: (user + system) / 1000 };
}
