import { svg, type SVGTemplateResult } from 'lit';

export type Point = readonly [x: number, y: number];

/** A closed outline through points. */
export function outline(points: readonly Point[]): string {
  return `${line(points)}Z`;
}

/** An open line through points. */
export function line(points: readonly Point[]): string {
  return points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${round(x)} ${round(y)}`).join('');
}

/** A freehand line where something is broken off, from one point to another. */
export function breakLine([x1, y1]: Point, [x2, y2]: Point): string {
  const length = Math.hypot(x2 - x1, y2 - y1);
  const waves = Math.max(2, 2 * Math.round(length / 22));
  const along: Point = [(x2 - x1) / waves, (y2 - y1) / waves];
  const side: Point = length === 0 ? [0, 0] : [(-(y2 - y1) / length) * 4, ((x2 - x1) / length) * 4];
  let path = `M${round(x1)} ${round(y1)}`;
  for (let i = 0; i < waves; i += 1) {
    const sign = i % 2 === 0 ? 1 : -1;
    path += `q${round(along[0] / 2 + side[0] * sign)} ${round(along[1] / 2 + side[1] * sign)} ${round(along[0])} ${round(along[1])}`;
  }
  return path;
}

/** The hatchings of one drawing: `housing`, `steel`, `driver`, `ring`, `rubber`, `doubt`. */
export function hatchings(): SVGTemplateResult {
  return svg`<defs>
    <pattern id="housing" width="8" height="8" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="hatch" d="M0 0V8"></path></pattern>
    <pattern id="driver" width="6.5" height="6.5" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)"><path class="hatch" d="M0 0V6.5"></path></pattern>
    <pattern id="steel" width="3.4" height="3.4" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)"><path class="hatch" d="M0 0V3.4"></path></pattern>
    <pattern id="ring" width="4.6" height="4.6" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)"><path class="hatch" d="M0 0V4.6"></path></pattern>
    <pattern id="rubber" width="2.6" height="2.6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="hatch dense" d="M0 0V2.6M0 0H2.6"></path></pattern>
    <pattern id="doubt" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)"><path class="hatch" d="M0 0V5"></path></pattern>
  </defs>`;
}

export function round(value: number): number {
  return Math.round(value * 100) / 100;
}
