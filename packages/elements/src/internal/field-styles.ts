import { css } from 'lit';

/** A field on paper: a label above, a ruled line, what was understood beside it, an error below. */
export const fieldStyles = css`
  :host {
    display: block;
  }
  label,
  legend,
  .label {
    display: block;
    font-size: 0.875rem;
    line-height: 1.3;
    color: var(--_quiet);
    padding: 0;
    text-wrap: pretty;
  }
  .line {
    display: flex;
    align-items: baseline;
    gap: 0 0.5rem;
    border-block-end: 1.5px solid var(--_field);
    background: var(--_sunk);
    border-radius: 3px 3px 0 0;
    padding-inline: 0.6rem;
    min-height: var(--_target);
  }
  .line:focus-within {
    border-block-end-color: var(--_accent);
    box-shadow: 0 2px 0 0 var(--_accent);
  }
  .line.faulty {
    border-block-end-color: var(--_bad);
    box-shadow: 0 1px 0 0 var(--_bad);
  }
  input,
  select {
    font: 600 1.0625rem/1.2 var(--_font);
    font-variant-numeric: tabular-nums;
    color: var(--_ink);
    background: none;
    border: 0;
    padding: 0;
    min-height: calc(var(--_target) - 2px);
    min-width: 0;
    flex: 1 1 4.5rem;
    width: 100%;
    outline: none;
    border-radius: 0;
  }
  .line input:focus-visible,
  .line select:focus-visible {
    outline: none;
  }
  input::placeholder {
    color: var(--_quiet);
    font-weight: 400;
    opacity: 1;
  }
  select {
    appearance: none;
    padding-inline-end: 1.4rem;
    text-overflow: ellipsis;
    cursor: pointer;
  }
  select option {
    color: var(--_ink);
    background: var(--_paper);
  }
  select.none {
    font-weight: 400;
    color: var(--_quiet);
  }
  .choose {
    position: relative;
  }
  .choose::after {
    content: '';
    position: absolute;
    inset-inline-end: 0.85rem;
    inset-block-start: 50%;
    width: 0.5em;
    height: 0.5em;
    margin-block-start: -0.4em;
    border: solid var(--_quiet);
    border-width: 0 2px 2px 0;
    transform: rotate(45deg);
    pointer-events: none;
  }
  .entry {
    display: grid;
    gap: 0.15rem 0.75rem;
    align-items: center;
  }
  @container (min-width: 20.5rem) and (max-width: 38rem) {
    .entry {
      grid-template-columns: minmax(0, 5fr) minmax(0, 6fr);
    }
  }
  .understood {
    flex: none;
    max-width: 60%;
    color: var(--_quiet);
    font-size: 0.9375rem;
    white-space: nowrap;
  }
  /* What was understood goes below what was typed where both have no room side by side. */
  @supports (field-sizing: content) {
    .line {
      flex-wrap: wrap;
    }
    .line input {
      field-sizing: content;
      flex-basis: auto;
      width: auto;
      min-width: 2ch;
      max-width: 100%;
    }
    .understood {
      max-width: 100%;
      margin-inline-start: auto;
      padding-block-end: 0.2rem;
    }
  }
  .error {
    margin: 0.3rem 0 0;
    display: grid;
    grid-template-columns: 1.25em 1fr;
    gap: 0.4rem;
    font-size: 0.9375rem;
    line-height: 1.35;
    color: var(--_bad);
  }
  .help {
    margin: 0.2rem 0 0;
    font-size: 0.8125rem;
    line-height: 1.35;
    color: var(--_quiet);
  }
  .keys {
    display: none;
    gap: 0.35rem;
    padding-block-start: 0.35rem;
  }
  .keys button {
    flex: 1 1 var(--_target);
    min-height: var(--_target);
    font: 600 1.0625rem var(--_font);
    color: var(--_ink);
    background: var(--_paper);
    border: 1.5px solid var(--_field);
    border-radius: 4px;
    cursor: pointer;
  }
  @media (pointer: coarse) {
    .keys.out {
      display: flex;
    }
  }
`;

/** Label and line side by side where there is room for both and not for more. */
export const inlineStyles = css`
  :host {
    container-type: inline-size;
  }
`;
