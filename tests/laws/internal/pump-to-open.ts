/** The seal of a bilge pump that is to come out: all measured, a bearing 2 mm behind it. */
export const pumpToOpen = {
  seal: { shaftMm: 20, outsideMm: 35, widthMm: 7, construction: 'metal-case', lipMaterial: 'NBR', caseThicknessMm: 1 },
  shaft: { readings: [{ instrument: 'digital-calliper', valuesMm: [20, 19.99, 20] }] },
  bore: { readings: [{ instrument: 'digital-calliper', valuesMm: [35.01, 35.02, 35] }], material: 'al-a380' },
  clearBehindMm: 2,
  behind: 'bearing',
  oldDepthMm: [1.5, 1.5, 1.4, 1.6],
  lipFacing: 'inward',
  retainedBy: 'nothing',
} as const;
