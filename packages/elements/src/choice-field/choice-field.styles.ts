import { css } from 'lit';

export const styles = css`
  fieldset {
    border: 0;
    margin: 0;
    padding: 0;
    min-width: 0;
  }
  .segments {
    display: flex;
    flex-wrap: wrap;
    gap: 0.35rem;
    margin-block-start: 0.2rem;
  }
  .segments label {
    position: relative;
    display: flex;
    align-items: center;
    justify-content: center;
    min-height: var(--_target);
    min-width: var(--_target);
    padding: 0.2rem 0.85rem;
    font-size: 1rem;
    font-weight: 500;
    color: var(--_ink);
    border: 1.5px solid var(--_field);
    border-radius: 3px;
    cursor: pointer;
  }
  .segments input {
    position: absolute;
    inset: 0;
    width: 100%;
    height: 100%;
    margin: 0;
    opacity: 0;
    cursor: pointer;
  }
  .segments label:has(input:checked) {
    background: var(--_ink);
    border-color: var(--_ink);
    color: var(--_paper);
    font-weight: 650;
  }
  .segments label:has(input:focus-visible) {
    outline: 3px solid var(--_accent);
    outline-offset: 2px;
  }
  .segments .none {
    padding: 0;
    color: var(--_quiet);
    border-color: transparent;
    font-size: 0.875rem;
  }
  @media (forced-colors: active) {
    .segments label:has(input:checked) {
      outline: 3px solid Highlight;
    }
  }
`;
