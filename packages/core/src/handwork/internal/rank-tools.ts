import { verdicts } from '../../result/index.js';
import type { Tool } from '../tool-field.js';
import type { OwnInstrument } from '../../measure/index.js';
import type { OwnMaterial } from '../../material/index.js';
import type { DriverNeed } from './driver-need.js';
import { judgeTool, missOf, type JudgedTool } from './judge-tool.js';
import { standardTools } from './standard-tools.js';
import { ownTool } from './tool-size.js';

/** Every tool judged: those that may serve, best first, and those that do not, nearest first. */
export interface RankedTools {
  readonly usable: readonly JudgedTool[];
  readonly failing: readonly JudgedTool[];
  readonly judgedCount: number;
}

export interface ToolStock {
  readonly toolsAtHand: readonly Tool[];
  readonly includeStandardTubes: boolean;
  readonly instruments: readonly OwnInstrument[];
  readonly materials: readonly OwnMaterial[];
  readonly workshopTemperatureC: number | null;
}

/** Judges and ranks: verdict first, then the workshop's own, then a stop of its own, then margin; names settle ties. */
export function rankTools(need: DriverNeed, stock: ToolStock): RankedTools {
  const own = stock.toolsAtHand.map((tool, at) => ownTool(tool, at, stock.instruments, stock.materials));
  const tools = stock.includeStandardTubes ? [...own, ...standardTools()] : own;
  const judged = tools.map((tool) => judgeTool(tool, need, stock.workshopTemperatureC));
  const isFlush = need.final.kind === 'flush';
  const usable = judged.filter(({ verdict }) => verdict !== 'does not suit');
  const failing = judged.filter(({ verdict }) => verdict === 'does not suit');
  return {
    usable: usable.sort((a, b) => rank(a) - rank(b) || ownFirst(a, b) || (isFlush ? stops(a) - stops(b) : 0) || b.leastMarginMm - a.leastMarginMm || byName(a, b)),
    failing: failing.sort((a, b) => ownFirst(a, b) || missed(a) - missed(b) || byName(a, b)),
    judgedCount: judged.length,
  };
}

function rank({ verdict }: JudgedTool): number {
  return verdicts.indexOf(verdict);
}

function ownFirst(a: JudgedTool, b: JudgedTool): number {
  return Number(b.tool.origin === 'own') - Number(a.tool.origin === 'own');
}

function stops({ role }: JudgedTool): number {
  return role === 'stops at the face' ? 0 : 1;
}

function byName(a: JudgedTool, b: JudgedTool): number {
  return a.tool.name < b.tool.name ? -1 : a.tool.name > b.tool.name ? 1 : 0;
}

/** How far from serving: the largest miss, or very far where it is no matter of millimetres. */
function missed(judged: JudgedTool): number {
  return missOf(judged)?.missMm ?? 1e6;
}
