import * as z from 'zod/mini';
import { forceField } from '../../quantity/index.js';
import { candourFields, choiceField, findingField, numberField, outputNumber, spanField, verdictField } from '../../result/index.js';
import { jointShape } from './joint-shape.js';

export const pressJointInputField = z.strictObject({
  ...jointShape,
  axialLoadN: z.optional(forceField({ label: 'axial load on the joint', unit: 'N', from: 0, upTo: 1e9 })),
  torqueLoadNm: z.optional(numberField({ label: 'torque on the joint', unit: 'N·m', from: 0, upTo: 1e9 })),
});

const plasticField = z.strictObject({
  contactPressureMpa: outputNumber('contact pressure with the hub flowing', 'MPa'),
  plasticDiameterMm: outputNumber('diameter up to which the hub flows', 'mm'),
  plasticAreaPercent: outputNumber('share of the hub section that flows', '%'),
  isFullyPlastic: z.boolean().check(z.meta({ label: 'the hub flows right through', unit: '' })),
  pressForceN: z.nullable(outputNumber('force to press it together', 'N')),
  axialForceN: z.nullable(outputNumber('axial force at which it slips', 'N')),
  torqueNm: z.nullable(outputNumber('torque at which it slips', 'N·m')),
});

const maybe = (label: string, unit: string) => z.nullable(outputNumber(label, unit));
const yieldsField = z.strictObject({
  hub: z.nullable(z.boolean().check(z.meta({ label: 'the hub yields', unit: '' }))),
  shaft: z.nullable(z.boolean().check(z.meta({ label: 'the shaft yields', unit: '' }))),
});

export const pressJointOutputField = z.strictObject({
  verdict: verdictField,
  contactPressureMpa: outputNumber('contact pressure', 'MPa'),
  contactPressureSpanMpa: spanField('contact pressure over the spread of expansion coefficients', 'MPa'),
  effectiveInterferenceUm: outputNumber('interference that presses; below zero a gap', 'µm'),
  thermalInterferenceUm: outputNumber('interference gained by temperature', 'µm'),
  turningLossUm: outputNumber('interference lost by turning', 'µm'),
  smoothingUm: outputNumber('interference lost as the surfaces smooth', 'µm'),
  hubHoopStressMpa: outputNumber('hoop stress at the bore of the hub', 'MPa'),
  hubVonMisesMpa: outputNumber('stress of von Mises at the bore of the hub', 'MPa'),
  hubTrescaMpa: outputNumber('stress of Tresca at the bore of the hub', 'MPa'),
  shaftHoopStressMpa: z.strictObject({ bore: maybe('hoop stress at the bore of the shaft', 'MPa'), surface: outputNumber('hoop stress at the surface of the shaft', 'MPa') }),
  shaftVonMisesMpa: outputNumber('largest stress of von Mises in the shaft', 'MPa'),
  shaftTrescaMpa: outputNumber('largest stress of Tresca in the shaft', 'MPa'),
  criterion: choiceField(['von Mises'], { label: 'criterion of yielding' }),
  yields: yieldsField,
  firstYieldUm: z.strictObject({ hub: maybe('effective interference at which the hub first yields', 'µm'), shaft: maybe('effective interference at which the shaft first yields', 'µm') }),
  elasticPlastic: z.nullable(plasticField),
  pressForceN: maybe('force to press it together, friction at its high end', 'N'),
  axialForceN: maybe('axial force at which it slips, friction at its low end', 'N'),
  torqueNm: maybe('torque at which it slips, friction at its low end', 'N·m'),
  slipRatio: maybe('load as a share of what it holds', ''),
  hubOutsideGrowthUm: outputNumber('growth of the outside of the hub by the fit and by turning', 'µm'),
  shaftBoreGrowthUm: maybe('growth of the bore of the shaft by the fit and by turning; below zero it closes', 'µm'),
  looseFromRpm: maybe('speed at which the joint comes loose', 'rpm'),
  findings: z.readonly(z.array(findingField)),
  ...candourFields,
});

export type PressJointInput = z.infer<typeof pressJointInputField>;
export type PressJointOutput = z.infer<typeof pressJointOutputField>;
