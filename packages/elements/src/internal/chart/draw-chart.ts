import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import { nothing, svg, type SVGTemplateResult } from 'lit';
import type { ChartAxis, ChartData } from './chart-data.js';

const margin = { top: 12, right: 14, bottom: 44, left: 62 };

/** The chart drawn at its real size in px: text keeps its size however narrow the place is. */
export function drawChart(data: ChartData, width: number, height: number): SVGTemplateResult {
  const { x: xAxis, y: yAxis } = data;
  const y = scaleLinear([yAxis.from, yAxis.to], [height - margin.bottom, margin.top]);
  const yTicks = roundNumbers(yAxis, Math.max(3, Math.floor(height / 55)));
  const left = Math.max(margin.left, longest(yTicks.map(yAxis.write)) * letterWidth + 12);
  const x = scaleLinear([xAxis?.from ?? 0, xAxis?.to ?? 1], [left, width - margin.right]);
  const xTicks = xAxis === null ? [] : ticksWithRoom((count) => roundNumbers(xAxis, count), xAxis.write, width - left - margin.right);
  const bandOf = area<{ readonly x: number; readonly low: number; readonly high: number }>().x((point) => x(point.x)).y0((point) => y(point.low)).y1((point) => y(point.high));
  const lineOf = line<{ readonly x: number; readonly y: number }>().x((point) => x(point.x)).y((point) => y(point.y));
  const [right, top, bottom] = [width - margin.right, margin.top, height - margin.bottom];
  const zero = yAxis.from < 0 && yAxis.to > 0 ? svg`<line class="zero" x1=${left} x2=${right} y1=${y(0)} y2=${y(0)}></line>` : nothing;
  return svg`
    ${patterns()}
    ${yTicks.map((tick) => svg`<line class="grid" x1=${left} x2=${right} y1=${y(tick)} y2=${y(tick)}></line><text class="tick" x=${left - 8} y=${y(tick)} dy="0.35em" text-anchor="end">${yAxis.write(tick)}</text>`)}
    ${xTicks.map((tick) => svg`<line class="grid" x1=${x(tick)} x2=${x(tick)} y1=${top} y2=${bottom}></line><text class="tick" x=${x(tick)} y=${bottom + 18} text-anchor="middle">${xAxis?.write(tick) ?? ''}</text>`)}
    ${data.bands.map(({ pattern, points }) => svg`<path class="band ${pattern}" fill="url(#${pattern})" d=${bandOf([...points]) ?? ''}></path>`)}
    ${data.boxes.map(({ name, pattern, x: [from, to], y: [low, high] }) => svg`<g><rect class="box ${pattern}" fill="url(#${pattern})" x=${x(from)} width=${x(to) - x(from)} y=${y(Math.max(low, high))} height=${Math.max(1, Math.abs(y(low) - y(high)))}></rect><text class="name" x=${x((from + to) / 2)} y=${bottom + 18} text-anchor="middle">${name}</text></g>`)}
    ${zero}
    ${data.lines.map(({ pattern, points }) => svg`<path class="line ${pattern}" d=${lineOf([...points]) ?? ''}></path>`)}
    ${data.limits.map(({ name, axis, at }) => (axis === 'y'
      ? svg`<line class="limit" x1=${left} x2=${right} y1=${y(at)} y2=${y(at)}></line>${nameOfLimit(name, y(at), data.limits.filter((other) => other.axis === 'y').map((other) => y(other.at)), [left, right], data.lines.map(({ points }) => points.map((point) => ({ x: x(point.x), y: y(point.y) }))))}`
      : svg`<line class="limit" x1=${x(at)} x2=${x(at)} y1=${top} y2=${bottom}></line><text class="name" x=${x(at) + (x(at) > (left + right) / 2 ? -5 : 5)} y=${top + 12} text-anchor=${x(at) > (left + right) / 2 ? 'end' : 'start'}>${name}</text>`))}
    ${data.marks.map((mark) => svg`<g class="mark">${mark.yLow === undefined || mark.yHigh === undefined ? nothing : svg`<path d="M${x(mark.x)} ${y(mark.yLow)}V${y(mark.yHigh)}M${x(mark.x) - 5} ${y(mark.yLow)}h10M${x(mark.x) - 5} ${y(mark.yHigh)}h10"></path>`}<circle cx=${x(mark.x)} cy=${y(mark.y)} r="4.5"></circle></g>`)}
    <path class="axis" d="M${left} ${top}V${bottom}H${right}"></path>
    ${xAxis === null ? nothing : svg`<text class="label" x=${right} y=${height - 8} text-anchor="end">${xAxis.label}</text>`}
  `;
}

/** [px] About what one letter takes. */
const letterWidth = 7;

/** The name of a limit above its line, or below it where another limit runs close above: at the right end, or at the left one where only there no curve runs through it. */
function nameOfLimit(name: string, y: number, limits: readonly number[], [left, right]: readonly [number, number], lines: readonly (readonly { readonly x: number; readonly y: number }[])[]): SVGTemplateResult {
  const width = name.length * letterWidth;
  const isBelow = limits.some((other) => other < y && other > y - 18);
  const [top, bottom] = isBelow ? [y, y + 18] : [y - 18, y];
  const isCrossed = (from: number) => lines.some((points) => points.some((end, i) => {
    const start = points[i - 1];
    if (start === undefined || start.x === end.x) return false;
    const [one, other] = [Math.max(from, start.x), Math.min(from + width, end.x)];
    const heightAt = (x: number) => start.y + ((end.y - start.y) * (x - start.x)) / (end.x - start.x);
    return one < other && Math.max(heightAt(one), heightAt(other)) > top && Math.min(heightAt(one), heightAt(other)) < bottom;
  }));
  const isLeft = isCrossed(right - width) && !isCrossed(left + 4);
  return svg`<text class="name" x=${isLeft ? left + 4 : right} y=${isBelow ? y + 14 : y - 5} text-anchor=${isLeft ? 'start' : 'end'}>${name}</text>`;
}

function longest(texts: readonly string[]): number {
  return Math.max(0, ...texts.map(({ length }) => length));
}

/** Round numbers along an axis, in the unit that is written; about as many as asked for. */
export function roundNumbers({ from, to, shown = (value) => value }: ChartAxis, count: number): readonly number[] {
  const [atZero, step] = [shown(0), shown(1) - shown(0)];
  return scaleLinear([shown(from), shown(to)], [0, 1]).ticks(count).map((tick) => (tick - atZero) / step);
}

/** As many ticks as their numbers have room beside each other. */
function ticksWithRoom(ticks: (count: number) => readonly number[], write: (value: number) => string, width: number): readonly number[] {
  for (let count = 8; count > 1; count -= 1) {
    const found = ticks(count);
    const widest = longest(found.map(write)) * letterWidth + 14;
    if (found.length * widest <= width) return found;
  }
  return ticks(1);
}

/** Hatchings that stand in black and white: each area differs by its lines, not by its colour. */
function patterns(): SVGTemplateResult {
  return svg`<defs>
    <pattern id="first" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="hatch" d="M0 0V7"></path></pattern>
    <pattern id="second" width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(-45)"><path class="hatch" d="M0 0V7"></path></pattern>
    <pattern id="third" width="6" height="6" patternUnits="userSpaceOnUse"><path class="hatch" d="M0 3H6"></path></pattern>
  </defs>`;
}
