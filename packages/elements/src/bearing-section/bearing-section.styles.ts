import { css } from 'lit';

export const styles = css`
  /* Takes a full line back where a broken one belongs. */
  .rubbed {
    stroke: var(--_paper);
    stroke-width: 3;
    fill: none;
  }
  .pull {
    stroke: var(--_accent);
    stroke-width: 4;
    fill: none;
  }
  .grip {
    fill: var(--_accent);
  }
  .bearing .axis {
    stroke-width: 0.7;
    stroke-dasharray: 8 2 2 2;
  }
`;
