import { css } from 'lit';

export const styles = css`
  :host {
    display: block;
  }
  figure {
    margin: 0;
  }
  figcaption {
    font-weight: 650;
  }
  svg {
    display: block;
    width: 100%;
    overflow: visible;
  }
  text {
    fill: var(--_ink);
    font-size: 12px;
  }
  /* What is written over lines stays readable. */
  .name {
    paint-order: stroke;
    stroke: var(--_paper);
    stroke-width: 4px;
  }
  .tick,
  .label {
    fill: var(--_quiet);
  }
  .grid {
    stroke: var(--_rule);
    stroke-width: 0.75;
  }
  .axis,
  .zero {
    fill: none;
    stroke: var(--_ink);
    stroke-width: 1.25;
  }
  .hatch {
    stroke: var(--_quiet);
    stroke-width: 1;
  }
  .band {
    stroke: none;
  }
  .box {
    stroke: var(--_ink);
    stroke-width: 1.5;
  }
  .line {
    fill: none;
    stroke: var(--_ink);
    stroke-width: 2;
  }
  .line.second {
    stroke-dasharray: 8 5;
  }
  .line.third {
    stroke-dasharray: 2 4;
  }
  .limit {
    stroke: var(--_accent);
    stroke-width: 1.5;
    stroke-dasharray: 12 4 2 4;
  }
  .mark path {
    fill: none;
    stroke: var(--_ink);
    stroke-width: 1.5;
  }
  .mark circle {
    fill: var(--_paper);
    stroke: var(--_accent);
    stroke-width: 2.5;
  }
  .above {
    margin: 0.25rem 0 0;
    font-size: 0.8125rem;
    color: var(--_quiet);
  }
  ul {
    display: flex;
    flex-wrap: wrap;
    gap: 0.25rem 1.25rem;
    margin: 0.5rem 0 0;
    padding: 0;
    list-style: none;
    font-size: 0.875rem;
  }
  li {
    display: flex;
    align-items: center;
    gap: 0.5rem;
  }
  li svg {
    flex: none;
    width: 30px;
    height: 14px;
  }
  details {
    margin-block-start: 0.5rem;
  }
  summary,
  button {
    min-height: var(--_target);
    display: flex;
    align-items: center;
    cursor: pointer;
    color: var(--_accent);
    font: inherit;
    font-weight: 550;
  }
  button {
    padding: 0;
    border: 0;
    background: none;
  }
  .table {
    overflow-x: auto;
  }
  table {
    border-collapse: collapse;
    font-size: 0.875rem;
  }
  th,
  td {
    padding: 0.25rem 1rem 0.25rem 0;
    text-align: start;
    border-block-end: 1px solid var(--_rule);
  }
  th {
    font-weight: 550;
  }
`;
