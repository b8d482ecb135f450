/**
 * Stands in for d3-interpolate, of which the scales of the charts need numbers only: it would bring the spaces of colours along.
 * The names are those that d3-scale asks for.
 */
export function interpolateNumber(from: number, to: number): (share: number) => number {
  return (share) => from * (1 - share) + to * share;
}

export function interpolateRound(from: number, to: number): (share: number) => number {
  const between = interpolateNumber(from, to);
  return (share) => Math.round(between(share));
}

// `piecewise` is asked for by scales of colours, which are left out of the page.
export { interpolateNumber as interpolate, interpolateNumber as piecewise };
