/** Upper ends of the size ranges as the tables print their rows; each range begins where the one before it ends. */
export const printedRows = {
  /** Rows of letters whose deviation does not change inside a range. */
  plain: [3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500],
  /** Rows of A, B, C and a, b, c: split over 30 mm. */
  splitOver30: [3, 6, 10, 18, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450, 500],
  /** Rows of R, S and r, s: split over 50 mm. */
  splitOver50: [3, 6, 10, 18, 30, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450, 500],
  /** Rows of U and u: split over 18 mm. */
  splitOver18: [3, 6, 10, 18, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450, 500],
  /** Rows of x, z and their like: split over 10 mm. */
  splitOver10: [3, 6, 10, 14, 18, 24, 30, 40, 50, 65, 80, 100, 120, 140, 160, 180, 200, 225, 250, 280, 315, 355, 400, 450, 500],
  /** Rows over 500 mm. */
  large: [630, 800, 1000, 1250, 1600, 2000, 2500, 3150],
  /** Rows over 500 mm of R, S, T, U and r, s, t, u. */
  largeSplit: [560, 630, 710, 800, 900, 1000, 1120, 1250, 1400, 1600, 1800, 2000, 2240, 2500, 2800, 3150],
} as const;

export interface PrintedBlock {
  readonly table: string;
  readonly rows: keyof typeof printedRows;
  /** For each class the printed `upper/lower` limits [µm], row by row; `-` where the table has none. */
  readonly classes: Readonly<Record<string, string>>;
}
