import { css } from 'lit';

/** How signs look: outlined for good and note, filled for what needs eyes. */
export const signStyles = css`
  .sign {
    width: 1.35em;
    height: 1.35em;
    flex: none;
    overflow: visible;
  }
  .sign .shape {
    fill: none;
    stroke: currentColor;
    stroke-width: 2;
    stroke-linejoin: round;
  }
  .sign .mark {
    fill: none;
    stroke: currentColor;
    stroke-width: 2.4;
    stroke-linecap: round;
    stroke-linejoin: round;
  }
  .sign.care .shape,
  .sign.unknown .shape,
  .sign.bad .shape {
    fill: currentColor;
  }
  .sign.care .mark,
  .sign.unknown .mark,
  .sign.bad .mark {
    stroke: var(--_paper);
  }
  .sign.good {
    color: var(--_good);
  }
  .sign.note {
    color: var(--_quiet);
  }
  .sign.care {
    color: var(--_care);
  }
  .sign.unknown {
    color: var(--_unknown);
  }
  .sign.bad {
    color: var(--_bad);
  }
  @media print {
    .sign {
      print-color-adjust: exact;
    }
  }
`;
