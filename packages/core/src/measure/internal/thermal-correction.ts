import * as z from 'zod/mini';
import { partMaterial, partMaterialField, type Material, type OwnMaterial } from '../../material/index.js';
import { temperatureDifferenceField, temperatureField } from '../../quantity/index.js';
import { commonPractice, invalidInput, source, type Assumption } from '../../result/index.js';
import type { BudgetLine } from '../uncertainty-budget.js';

/** Temperatures while measuring, to be spread into an input. All optional; the part's temperature needs its material. */
export const thermalFields = {
  partTemperatureC: z.optional(temperatureField({ label: 'temperature of the part while measured', unit: '°C', from: -60, upTo: 300, typical: '20' })),
  instrumentTemperatureC: z.optional(temperatureField({ label: 'temperature of the instrument', help: 'left out: the same as the part', unit: '°C', from: -60, upTo: 100, typical: '20' })),
  partMaterial: z.optional(partMaterialField),
  temperatureUncertaintyK: z.optional(temperatureDifferenceField({ label: 'how well either temperature is known, plus or minus', unit: 'K', from: 0, upTo: 50, typical: '1' })),
};

export interface ThermalInput {
  readonly partTemperatureC?: number | undefined;
  readonly instrumentTemperatureC?: number | undefined;
  readonly partMaterial?: z.infer<typeof partMaterialField> | undefined;
  readonly temperatureUncertaintyK?: number | undefined;
}

/** What temperature does to a reading: the size at 20 °C and what stays open. */
export interface ThermalCorrection {
  /** Size at 20 °C less the reading. */
  readonly correctionUm: number;
  readonly sizeAt20CMm: number;
  readonly lines: readonly BudgetLine[];
  readonly assumptions: readonly Assumption[];
  readonly material: Material;
  readonly instrumentAboveK: number;
  readonly partAboveK: number;
  readonly temperatureUncertaintyK: number;
}

const referenceTemperatureC = 20;
/** Expansion of steel gauges and the limits it is known within. */
export const gaugeExpansionPerK = 11.5e-6;
const gaugeExpansionLimitPerK = 2e-6;
const assumedTemperatureK = 1;
const expansionUnit = 'µm/(m·K)';
const gaugeSource = source('jcgm-100-2008', 'memory', 'H.1.3');

/**
 * A reading brought to 20 °C.  D₂₀ = D·(1 + αᵢ·(tᵢ − 20)) / (1 + αₚ·(tₚ − 20))
 * Limits of coefficients and temperatures count as rectangular: u = half width/√3, times D·(t − 20) or D·α.
 * @returns null where no temperature was given
 * @throws CalculationError invalid-input (temperature without the material, or the instrument's without the part's)
 * @source iso-1-2022 (held as: page); jcgm-100-2008, clauses 4.3.7 and H.1 (held as: memory)
 */
export function thermalCorrection(sizeMm: number, input: ThermalInput, own: readonly OwnMaterial[] = []): ThermalCorrection | null {
  const { partTemperatureC, instrumentTemperatureC = partTemperatureC, partMaterial: given } = input;
  if (partTemperatureC === undefined || instrumentTemperatureC === undefined) {
    if (partTemperatureC === undefined && (instrumentTemperatureC !== undefined || input.temperatureUncertaintyK !== undefined)) {
      throw invalidInput('partTemperatureC', undefined, 'a temperature in °C', 'missing; the temperature of the instrument says nothing without that of the part');
    }
    return null;
  }
  if (given === undefined) throw invalidInput('partMaterial', undefined, 'a material id or its numbers', 'missing; a temperature needs the material that grows with it');
  const material = partMaterial(given, own, 'partMaterial');
  const { low, probable, high } = material.expansionPerK;
  const partAboveK = partTemperatureC - referenceTemperatureC;
  const instrumentAboveK = instrumentTemperatureC - referenceTemperatureC;
  const temperatureUncertaintyK = input.temperatureUncertaintyK ?? assumedTemperatureK;
  const sizeAt20CMm = (sizeMm * (1 + gaugeExpansionPerK * instrumentAboveK)) / (1 + probable * partAboveK);
  const line = (component: BudgetLine['component'], limitMm: number): BudgetLine => ({
    component, instrument: null, standardUncertaintyMm: Math.abs(limitMm) / Math.sqrt(3), distribution: 'rectangular', sensitivityFactor: 1, degreesOfFreedomCount: null,
  });
  const widestPerK = Math.max(high - probable, probable - low);
  return {
    correctionUm: (sizeAt20CMm - sizeMm) * 1000,
    sizeAt20CMm,
    lines: [
      line('part-expansion', sizeMm * partAboveK * widestPerK),
      line('instrument-expansion', sizeMm * instrumentAboveK * gaugeExpansionLimitPerK),
      line('part-temperature', sizeMm * probable * temperatureUncertaintyK),
      line('instrument-temperature', sizeMm * gaugeExpansionPerK * temperatureUncertaintyK),
    ],
    assumptions: assumptionsOf(input, material, partTemperatureC),
    material,
    instrumentAboveK,
    partAboveK,
    temperatureUncertaintyK,
  };
}

function assumptionsOf(input: ThermalInput, material: Material, partTemperatureC: number): readonly Assumption[] {
  const effect = 'size-at-20-c';
  const list: Assumption[] = [
    { name: 'instrument-expansion', value: microPerK(gaugeExpansionPerK - gaugeExpansionLimitPerK), upToValue: microPerK(gaugeExpansionPerK + gaugeExpansionLimitPerK), unit: expansionUnit, source: gaugeSource, effect },
  ];
  if (material.isExpansionSpanAssumed) list.push({ name: 'part-expansion-scatter', value: microPerK(material.expansionPerK.low), upToValue: microPerK(material.expansionPerK.high), unit: expansionUnit, source: commonPractice, effect });
  if (input.instrumentTemperatureC === undefined) list.push({ name: 'instrument-temperature-as-part', value: partTemperatureC, unit: '°C', source: commonPractice, effect });
  if (input.temperatureUncertaintyK === undefined) list.push({ name: 'temperature-uncertainty', value: assumedTemperatureK, unit: 'K', source: commonPractice, effect });
  return list;
}

function microPerK(perK: number): number {
  return Math.round(perK * 1e8) / 100;
}
