export { nothingAssumed, type Assumption, type Candour } from './assumption.js';
export {
  CalculationError,
  contradiction,
  invalidInput,
  joinPath,
  noSolution,
  noSuchClass,
  outsideTable,
  readWithin,
  type CalculationErrorCode,
  type CalculationErrorLine,
} from './calculation-error.js';
export { candourFields, findingField, sourceField, verdictField } from './candour-field.js';
export { libraryVersion, tablesEdition } from './edition.js';
export { checkedInput, defineCalculation, inputSchemaOf, jsonSchemasOf, type AnyCalculation, type Calculation, type CalculationDefinition, type Stamp } from './define-calculation.js';
export { choiceField, numberField, outputNumber, textField, wholeNumberField, yesNoField, type FieldMeta, type NumberFieldMeta } from './field.js';
export { deciding, supporting, type Finding, type Severity } from './finding.js';
export { anyGiven, atLeastOne, bothOrNone, exactlyOne, given, neither, notBoth, rulesInSchema, type SchemaRule } from './schema-rules.js';
export { fromSchemaIssues, pathText } from './from-schema-issues.js';
export { describeLimits, isWithin, type Limits } from './limits.js';
export { planStep, planStepField, type PlanStep } from './plan-step.js';
export { spanField, type Span } from './span.js';
export { commonPractice, plainGeometry, plainMechanics, source, type HeldMark, type SourceReference } from './source-reference.js';
export { verdictOf, verdicts, worseVerdict, type Verdict } from './verdict.js';
export type { ChoiceStep, FormulaStep, LookupStep, WorkingStep } from './working-step.js';
