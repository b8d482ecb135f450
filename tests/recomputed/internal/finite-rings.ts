/**
 * Any number of rings in each other without Lamé's formulas: finite elements along the radius (plane stress, linear elements,
 * two Gauss points), heat as free strain, turning as body force. Which joints touch is found by trying every pattern of
 * open and closed until all closed ones press and all open ones gape. Two meshes give the error, which is taken off (Richardson).
 */
export interface Part {
  readonly inside: number;
  readonly outside: number;
  readonly E: number;
  readonly nu: number;
  readonly alpha: number;
  readonly density: number;
  readonly warm: number;
  readonly yieldMpa?: number;
}

export interface Answer {
  readonly pressures: readonly number[];
  readonly gapsUm: readonly number[];
  /** Displacement on the diameter [µm] and stresses [MPa] at bore and outside of each ring. */
  readonly boreUm: readonly number[];
  readonly outsideUm: readonly number[];
  readonly hoopBore: readonly number[];
  readonly hoopOutside: readonly number[];
}

/** Radial displacements [mm] with these joints closed, node by node of each ring; and the force per radian that holds each ring's bore. */
function displaced(parts: readonly Part[], interferences: readonly number[], closed: readonly boolean[], omega: number, count: number) {
  const size = parts.length * (count + 1);
  const diagonal = new Array<number>(size).fill(0);
  const beside = new Array<number>(size).fill(0);
  const load = new Array<number>(size).fill(0);
  const elements = parts.map(({ inside, outside, E, nu, alpha, density, warm }, k) => {
    const h = (outside - inside) / 2 / count;
    const factor = E / (1 - nu * nu);
    return Array.from({ length: count }, (_, i) => {
      const r1 = inside / 2 + i * h;
      const stiff = [0, 0, 0];
      const force = [0, 0];
      for (const gauss of [-1, 1]) {
        const s = 0.5 + gauss / (2 * Math.sqrt(3));
        const r = r1 + s * h;
        const shape = [1 - s, s] as const;
        const radial = [-1 / h, 1 / h] as const;
        const hoop = [shape[0] / r, shape[1] / r] as const;
        const weight = (r * h) / 2;
        const term = (a: 0 | 1, b: 0 | 1) => factor * (radial[a] * radial[b] + hoop[a] * hoop[b] + nu * (radial[a] * hoop[b] + hoop[a] * radial[b])) * weight;
        stiff[0] = (stiff[0] ?? 0) + term(0, 0);
        stiff[1] = (stiff[1] ?? 0) + term(0, 1);
        stiff[2] = (stiff[2] ?? 0) + term(1, 1);
        for (const a of [0, 1] as const) {
          force[a] = (force[a] ?? 0) + weight * (factor * (1 + nu) * alpha * warm * (radial[a] + hoop[a]) + density * 1e-12 * omega * omega * r * shape[a]);
        }
      }
      return { node: k * (count + 1) + i, stiff, force };
    });
  });
  for (const { node, stiff, force } of elements.flat()) {
    diagonal[node] = (diagonal[node] ?? 0) + (stiff[0] ?? 0);
    diagonal[node + 1] = (diagonal[node + 1] ?? 0) + (stiff[2] ?? 0);
    beside[node] = (beside[node] ?? 0) + (stiff[1] ?? 0);
    load[node] = (load[node] ?? 0) + (force[0] ?? 0);
    load[node + 1] = (load[node + 1] ?? 0) + (force[1] ?? 0);
  }
  // A closed joint is a very short spring of no length: force P and displacement step are unknowns of one more equation, taken out here
  // by giving both nodes one displacement, the outer one larger by the interference.
  const order: number[][] = [];
  const step = new Array<number>(size).fill(0);
  parts.forEach((_, k) => {
    for (let i = 0; i <= count; i += 1) {
      const node = k * (count + 1) + i;
      if (i === 0 && k > 0 && closed[k - 1] === true) {
        order.at(-1)?.push(node);
        step[node] = (interferences[k - 1] ?? 0) / 2000;
      } else order.push([node]);
    }
  });
  const main = order.map((nodes) => nodes.reduce((sum, node) => sum + (diagonal[node] ?? 0), 0));
  const right = order.map((nodes) => nodes.reduce((sum, node) => sum + (load[node] ?? 0) - (diagonal[node] ?? 0) * (step[node] ?? 0), 0));
  // The neighbour outward of a stepped node carries its share of the step too.
  const off = order.map((nodes) => beside[nodes.at(-1) ?? 0] ?? 0);
  order.forEach((nodes, i) => {
    const last = nodes.at(-1) ?? 0;
    if (i + 1 < order.length && (step[last] ?? 0) !== 0) right[i + 1] = (right[i + 1] ?? 0) - (beside[last] ?? 0) * (step[last] ?? 0);
  });
  if (parts[0]?.inside === 0) {
    // Nothing moves on the axis.
    main[0] = 1;
    right[0] = 0;
    off[0] = 0;
  }
  const cut = off.map((value, i) => (i + 1 < order.length ? value : 0));
  for (let i = 1; i < order.length; i += 1) {
    const f = (cut[i - 1] ?? 0) / (main[i - 1] ?? 1);
    main[i] = (main[i] ?? 0) - f * (cut[i - 1] ?? 0);
    right[i] = (right[i] ?? 0) - f * (right[i - 1] ?? 0);
  }
  const solution = new Array<number>(order.length).fill(0);
  for (let i = order.length - 1; i >= 0; i -= 1) solution[i] = ((right[i] ?? 0) - (cut[i] ?? 0) * (solution[i + 1] ?? 0)) / (main[i] ?? 1);
  const u = new Array<number>(size).fill(0);
  order.forEach((nodes, i) => nodes.forEach((node) => (u[node] = (solution[i] ?? 0) + (step[node] ?? 0))));
  /** Force that the ring needs at its bore to stand still, per radian and mm of length: what its first element does not carry. */
  const boreForce = parts.map((_, k) => {
    const first = elements[k]?.[0];
    const node = first?.node ?? 0;
    return (first?.stiff[0] ?? 0) * (u[node] ?? 0) + (first?.stiff[1] ?? 0) * (u[node + 1] ?? 0) - (first?.force[0] ?? 0);
  });
  return { u, boreForce };
}

function solvedOnce(parts: readonly Part[], interferences: readonly number[], omega: number, count: number): Answer {
  const joints = interferences.length;
  for (let pattern = 0; pattern < 2 ** joints; pattern += 1) {
    const closed = interferences.map((_, j) => (pattern >> j) % 2 === 1);
    const { u, boreForce } = displaced(parts, interferences, closed, omega, count);
    const at = (k: number, i: number) => u[k * (count + 1) + i] ?? 0;
    const pressures = interferences.map((_, j) => (closed[j] === true ? (boreForce[j + 1] ?? 0) / ((parts[j + 1]?.inside ?? 0) / 2) : 0));
    const gapsUm = interferences.map((um, j) => (closed[j] === true ? 0 : 2000 * (at(j + 1, 0) - at(j, count)) - um));
    if (pressures.some((p) => p < 0) || gapsUm.some((gap) => gap < 0)) continue;
    const inner = (k: number) => (k === 0 ? 0 : (pressures[k - 1] ?? 0));
    const outer = (k: number) => (k < joints ? (pressures[k] ?? 0) : 0);
    const hoop = ({ E, nu, alpha, warm }: Part, u: number, r: number, radial: number) => E * (u / r - alpha * warm) + nu * radial;
    return {
      pressures,
      gapsUm,
      boreUm: parts.map((_, k) => 2000 * at(k, 0)),
      outsideUm: parts.map((_, k) => 2000 * at(k, count)),
      hoopBore: parts.map((part, k) => (part.inside === 0 ? 0 : hoop(part, at(k, 0), part.inside / 2, -inner(k)))),
      hoopOutside: parts.map((part, k) => hoop(part, at(k, count), part.outside / 2, -outer(k))),
    };
  }
  throw new Error('no pattern of joints holds');
}

/** Pressures, gaps, growth and stress of rings in each other; `omega` in 1/s. */
export function solvedRings(parts: readonly Part[], interferences: readonly number[], omega: number): Answer {
  const coarse = solvedOnce(parts, interferences, omega, 100);
  const fine = solvedOnce(parts, interferences, omega, 200);
  const better = (name: keyof Answer) => fine[name].map((value, i) => value + (value - (coarse[name][i] ?? 0)) / 3);
  return { pressures: better('pressures'), gapsUm: better('gapsUm'), boreUm: better('boreUm'), outsideUm: better('outsideUm'), hoopBore: better('hoopBore'), hoopOutside: better('hoopOutside') };
}
