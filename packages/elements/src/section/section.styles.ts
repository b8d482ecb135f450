import { css } from 'lit';

export const styles = css`
  :host {
    display: block;
    container-type: inline-size;
  }
  figure {
    margin: 0;
  }
  svg {
    display: block;
    width: 100%;
    height: auto;
    overflow: hidden;
    color: var(--_ink);
  }
  text {
    font: 500 13px var(--_font);
    font-variant-numeric: tabular-nums;
    fill: var(--_ink);
    stroke: var(--_paper);
    stroke-width: 4px;
    stroke-linejoin: round;
    paint-order: stroke;
  }
  .edge {
    stroke: var(--_ink);
    stroke-width: 1.7;
    stroke-linejoin: round;
    stroke-linecap: round;
  }
  path.edge:not([fill]):not(.fill) {
    fill: none;
  }
  .thin,
  .leader {
    stroke: var(--_ink);
    stroke-width: 0.8;
    fill: none;
  }
  .leader {
    stroke: var(--_quiet);
  }
  .dash {
    stroke-dasharray: 4 3;
  }
  .phantom {
    stroke: var(--_ink);
    stroke-width: 0.8;
    stroke-dasharray: 12 3 2 3 2 3;
    fill: none;
  }
  .axis {
    stroke: var(--_ink);
    stroke-width: 0.9;
    stroke-dasharray: 14 3 2 3;
    fill: none;
  }
  .fill,
  .paper {
    fill: var(--_paper);
  }
  .ink {
    fill: var(--_ink);
  }
  .nofill {
    fill: none;
  }
  .hatch {
    stroke: var(--_ink);
    stroke-width: 0.75;
    fill: none;
  }
  .hatch.dense {
    stroke-width: 0.7;
  }
  .line {
    stroke: var(--_ink);
    stroke-width: 0.8;
    fill: none;
  }
  .head {
    fill: var(--_ink);
  }
  .hit {
    fill: transparent;
  }
  .tappable {
    cursor: pointer;
  }
  .lit .line,
  .open .line {
    stroke: var(--_accent);
  }
  .lit .line {
    stroke-width: 2;
  }
  .lit .head,
  .open .head,
  .lit text,
  .open text {
    fill: var(--_accent);
  }
  .lit text {
    font-weight: 700;
  }
  .mark-ring {
    stroke: var(--_accent);
    stroke-width: 1.3;
    fill: none;
  }
  .mark-letter,
  .detail {
    font-weight: 700;
    fill: var(--_accent);
  }
  .caption,
  .label {
    font-size: 12.5px;
    font-weight: 400;
  }
  .frame {
    fill: none;
    stroke: var(--_accent);
    stroke-width: 1.2;
  }
  .box {
    stroke: var(--_ink);
    stroke-width: 1;
    stroke-dasharray: 3 2;
  }
  .whisker {
    stroke: var(--_accent);
    stroke-width: 2;
    fill: none;
  }
  .halo {
    stroke: var(--_paper);
    stroke-width: 5;
    fill: none;
  }
  .tool.moved {
    animation: slide-in 420ms cubic-bezier(0.2, 0.7, 0.2, 1);
  }
  @keyframes slide-in {
    from {
      transform: translateX(var(--from, -28px));
    }
  }
  .from-inside {
    --from: 28px;
  }
  /* Paper shows the end of the way, not its beginning. */
  @media print, (prefers-reduced-motion: reduce) {
    .tool.moved {
      animation: none;
    }
  }
  .scale {
    white-space: nowrap;
  }
  figcaption {
    display: flex;
    flex-wrap: wrap;
    gap: 0.1rem 1rem;
    align-items: baseline;
    justify-content: space-between;
    font-size: 0.8125rem;
    line-height: 1.35;
    color: var(--_quiet);
    padding: 0.25rem 0.1rem 0;
  }
  figcaption .bar {
    display: inline-block;
    width: auto;
    vertical-align: baseline;
  }
  figcaption .chosen {
    color: var(--_ink);
  }
  details {
    font-size: 0.875rem;
  }
  summary {
    min-height: var(--_target);
    gap: 0.4em;
    color: var(--_quiet);
  }
  summary::before {
    border-width: 0 1.5px 1.5px 0;
    margin-inline: 0.2em 0.3em;
  }
  table {
    border-collapse: collapse;
    width: 100%;
    max-width: 26rem;
  }
  th,
  td {
    text-align: start;
    font-weight: 400;
    padding: 0.2rem 0.5rem 0.2rem 0;
    border-block-end: 1px solid var(--_rule);
  }
  tbody > tr {
    height: var(--_target);
  }
  .nearer {
    min-height: var(--_target);
    padding: 0;
    font: inherit;
    font-size: 0.875rem;
    color: var(--_accent);
    background: none;
    border: 0;
    cursor: pointer;
  }
  .nearer[aria-pressed='true'] {
    font-weight: 650;
  }
  th button {
    min-height: var(--_target);
    padding: 0;
    font: inherit;
    color: inherit;
    text-align: start;
    background: none;
    border: 0;
    cursor: pointer;
  }
  td {
    text-align: end;
    white-space: nowrap;
    font-weight: 600;
  }
  thead th {
    color: var(--_quiet);
    font-size: 0.8em;
  }
  thead th:last-child {
    text-align: end;
  }
  @media print {
    details,
    .nearer {
      display: none;
    }
    figcaption {
      color: inherit;
    }
  }
`;
