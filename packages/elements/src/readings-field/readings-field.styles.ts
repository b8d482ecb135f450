import { css } from 'lit';

export const styles = css`
  fieldset {
    border: 0;
    margin: 0;
    padding: 0;
    min-width: 0;
  }
  legend {
    font-weight: 600;
    color: var(--_ink);
    margin-block-end: 0.3rem;
  }
  .grid {
    display: grid;
    grid-template-columns: repeat(auto-fill, minmax(8.5rem, 1fr));
    gap: 0.5rem;
    margin-block-start: 0.5rem;
  }
  .where .grid {
    grid-template-columns: 1fr;
  }
  .row {
    display: grid;
    gap: 0.35rem;
  }
  .where .row {
    grid-template-columns: minmax(0, 1.6fr) minmax(0, 1fr) minmax(0, 1fr);
  }
  .where .line {
    padding-inline: 0.4rem;
  }
  .line input {
    flex-basis: 3rem;
  }
  .row label {
    font-size: 0.8125rem;
  }
  .layout {
    margin-block-start: 0.5rem;
  }
  .pad-frame {
    overflow-x: auto;
    margin-block-start: 0.5rem;
  }
  .pad {
    border-collapse: collapse;
    width: 100%;
    font-variant-numeric: tabular-nums;
  }
  .pad th,
  .pad td {
    padding: 0.15rem;
    vertical-align: top;
    font-weight: inherit;
    text-align: start;
  }
  .pad thead td {
    vertical-align: middle;
    color: var(--_quiet);
    font-size: 0.8125rem;
    white-space: nowrap;
  }
  .pad input {
    width: 100%;
    min-width: 4.25rem;
    box-sizing: border-box;
    min-height: var(--_target);
    padding-inline: 0.4rem;
    border-block-end: 1.5px solid var(--_field);
    background: var(--_sunk);
    border-radius: 3px 3px 0 0;
  }
  .pad input:focus-visible {
    outline: none;
    border-block-end-color: var(--_accent);
    box-shadow: 0 2px 0 0 var(--_accent);
  }
  .pad th input {
    background: none;
    color: var(--_quiet);
    min-width: 3.25rem;
  }
  .pad tbody th {
    width: 22%;
  }
  .pad input[aria-invalid='true'] {
    border-block-end-color: var(--_bad);
    box-shadow: 0 1px 0 0 var(--_bad);
  }
  .pad .understood {
    display: block;
    font-size: 0.8125rem;
  }
  .pad-more {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem;
    margin-block-start: 0.4rem;
  }
  .pad-more button {
    font: inherit;
    font-size: 0.9375rem;
    min-height: var(--_target);
    padding-inline: 0.8rem;
    color: inherit;
    background: transparent;
    border: 1px solid var(--_rule);
    border-radius: 3px;
    cursor: pointer;
  }
  .result {
    margin: 0.4rem 0 0;
    font-size: 0.9375rem;
    color: var(--_quiet);
    text-wrap: pretty;
  }
  .result strong {
    color: var(--_ink);
  }
`;
