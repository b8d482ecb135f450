import { commonPractice, source, type Assumption, type Span } from '../../result/index.js';
import { sockets } from '../../tables/generated/sockets.js';
import { tubes } from '../../tables/generated/tubes.js';
import { markAt } from '../../tables/table.js';
import { toolMaterial, type ToolMaterial } from './tool-material.js';
import type { ToolSize } from './tool-size.js';
import { practiceValue } from './practice-value.js';

/** [1] Wall of a tube whose table gives the nominal alone, plus or minus. */
const wallShare = { metal: practiceValue('metal-wall-share', 'Factor'), plastic: practiceValue('plastic-wall-share', 'Factor') } as const;

/** Outside of a real socket below the largest that the standard lets it be. */
const socketBelowMostMm = practiceValue('socket-below-its-most', 'Mm').high;

let built: readonly ToolSize[] | null = null;

/** Tubes and sockets of the standard tables, one of each size and material. Rows without limits of the outside are left out. */
export function standardTools(): readonly ToolSize[] {
  built ??= [...once(tubesOfTable()), ...once(socketsOfTable())];
  return built;
}

function tubesOfTable(): readonly ToolSize[] {
  const { columns } = tubes;
  const list: ToolSize[] = [];
  for (let i = 0; i < tubes.rowCount; i += 1) {
    const low = columns.outsideMinMm[i];
    const high = columns.outsideMaxMm[i];
    const wallMm = columns.wallMm[i];
    if (low == null || high == null || wallMm == null || !(wallMm > 0)) continue;
    const material = materialOfRow(columns.material[i] ?? '');
    const ovalityMm = columns.outOfRoundMaxMm[i] ?? 0;
    const wall = wallBand(i, wallMm, material, { low, high });
    const inside = { low: Math.max(low - 2 * wall.band.high, 0), high: Math.max(high - 2 * wall.band.low, 0) };
    const leastInside = columns.insideMinMm[i];
    const mostInsideMm = inside.high + ovalityMm / 2;
    const insideMm = { low: Math.max(Math.min((leastInside ?? inside.low) - ovalityMm / 2, mostInsideMm), 0), high: mostInsideMm };
    list.push({
      name: `${whatItIs(columns.material[i] ?? '', columns.wallBasis[i] ?? '')}, ${columns.standard[i] ?? ''}, ${columns.designation[i] ?? ''}, ${columns.series[i] ?? ''}`,
      origin: 'standard',
      kind: 'tube',
      outsideMm: { low: low - ovalityMm / 2, high: high + ovalityMm / 2 },
      insideMm,
      passageMm: insideMm,
      nominalOutsideMm: columns.outsideMm[i] ?? (low + high) / 2,
      wallMm,
      material,
      lengthMm: null,
      isCutToLength: true,
      isClosed: false,
      closedEndDepthMm: null,
      endSquarenessMm: null,
      source: source(columns.rowSource[i] ?? tubes.source, markAt(tubes, 'outsideMinMm', i), `${columns.standard[i] ?? ''}, ${columns.series[i] ?? ''}`),
      assumptions: wall.assumptions,
      pathOf: () => 'toolsAtHand',
    });
  }
  return list;
}

function wallBand(i: number, wallMm: number, material: ToolMaterial | null, outside: Span): { readonly band: Span; readonly assumptions: readonly Assumption[] } {
  const { columns } = tubes;
  const most = columns.wallMaxMm[i];
  if (most != null) return { band: { low: wallMm, high: most }, assumptions: [] };
  const basis = String(columns.wallBasis[i] ?? '');
  const halfMm = outside.low / 2;
  if (basis.startsWith('minimum')) {
    const high = Math.min(1.1 * wallMm + 0.2, halfMm);
    return { band: { low: wallMm, high }, assumptions: [{ name: 'pipe-wall-over-least', value: '0.1 e + 0.2', unit: 'mm', source: source('din-8062', 'computed', 'wall tolerance, from its rows'), effect: 'driver-bands' }] };
  }
  if (basis.startsWith('maximum')) return { band: { low: 0.8 * wallMm, high: wallMm }, assumptions: [{ name: 'conduit-wall-under-most', value: 80, unit: '%', source: commonPractice, effect: 'driver-bands' }] };
  const isMetal = material !== null && !material.isPlastic;
  const { high: share, source: from } = isMetal ? wallShare.metal : wallShare.plastic;
  return { band: { low: wallMm * (1 - share), high: Math.min(wallMm * (1 + share), halfMm) }, assumptions: [{ name: 'tube-wall-tolerance', value: share * 100, unit: '%', source: from, effect: 'driver-bands' }] };
}

function socketsOfTable(): readonly ToolSize[] {
  const { columns } = sockets;
  const list: ToolSize[] = [];
  for (let i = 0; i < sockets.rowCount; i += 1) {
    const hexMm = columns.hexMm[i];
    const most = columns.outsideNutEndMaxMm[i];
    const cornersMm = columns.acrossCornersMm[i];
    if (hexMm == null || most == null || cornersMm == null) continue;
    const outsideMm = { low: Math.max(most - socketBelowMostMm, cornersMm), high: most };
    list.push({
      name: `${columns.drive[i] ?? ''} in drive socket, ${hexMm} mm`,
      origin: 'standard',
      kind: 'socket',
      outsideMm,
      insideMm: { low: cornersMm, high: Math.min(cornersMm + 1, outsideMm.low) },
      passageMm: { low: hexMm, high: cornersMm },
      nominalOutsideMm: most,
      wallMm: (most - cornersMm) / 2,
      material: toolMaterial('steel'),
      lengthMm: columns.lengthMaxMm[i] ?? null,
      isCutToLength: false,
      isClosed: true,
      closedEndDepthMm: null,
      endSquarenessMm: null,
      source: source(sockets.source, markAt(sockets, 'outsideNutEndMaxMm', i), 'outside at the nut end'),
      assumptions: [{ name: 'socket-under-most', value: socketBelowMostMm, unit: 'mm', source: commonPractice, effect: 'driver-bands' }],
      pathOf: () => 'toolsAtHand',
    });
  }
  return list;
}

/** What to look for in the scrap box: a standard alone tells a mechanic nothing. */
function whatItIs(material: string, wallBasis: string): string {
  if (material === 'copper') return 'copper tube';
  if (material === 'steel') return 'steel pipe';
  return `${material.toUpperCase()} ${wallBasis === 'maximum' || wallBasis === 'range' ? 'conduit' : 'pipe'}`;
}

function materialOfRow(text: string): ToolMaterial | null {
  if (text === 'abs-or-pvc') return null;
  if (/steel/i.test(text)) return toolMaterial('steel');
  if (/copper/i.test(text)) return toolMaterial('copper');
  if (/PVC/i.test(text)) return toolMaterial('pvc-u');
  if (/^PE/i.test(text)) return toolMaterial('pe');
  if (/^PP/i.test(text)) return toolMaterial('pp');
  return null;
}

/** The same tube stands in several standards: the first of a size and material stands for all. */
function once(tools: readonly ToolSize[]): readonly ToolSize[] {
  const seen = new Set<string>();
  return tools.filter((tool) => {
    const key = [tool.kind, tool.material?.id, tool.outsideMm.low.toFixed(2), tool.outsideMm.high.toFixed(2), tool.wallMm.toFixed(2)].join('|');
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}
