/** [°C] Temperature at which sizes are stated (ISO 1), and the range in which a fit is followed. */
export const referenceC = 20;
export const coldestC = -200;
export const hottestC = 600;
