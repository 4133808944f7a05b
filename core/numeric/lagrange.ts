/** What each node's value counts for at `x` by the polynomial through the chosen nodes; nought for the others. */
export function lagrange(nodes: readonly number[], chosen: readonly number[], x: number): number[] {
  return nodes.map((node, i) =>
    chosen.includes(i)
      ? chosen.reduce((w, j) => (i === j ? w : (w * (x - nodes[j]!)) / (node - nodes[j]!)), 1)
      : 0,
  );
}
