/** Where each batch stands, and when how many of its plants are ready. */

export {
  type BatchStages,
  STAGE_COLUMNS,
  type StageRemark,
  type StageRow,
  stagesOf,
} from "./batch-stages";
export { type BatchState, startOfForecast, stateFinder } from "./batch-state";
export { type BatchSteps, STEP_COLUMNS, stepsOf } from "./batch-steps";
export { comingBatches, drawPlants, sharesOfRoutes, waysOf } from "./coming-batches";
export { type Forecaster, type PassageAnyDay, timetableForecaster } from "./forecaster";
export { type GeneralShare, generalShare, generalShares } from "./general-shares";
export { likelyPlants } from "./likely-plants";
export { LOOKBACK_COLUMNS, type Lookback, lookback } from "./lookback";
export { ANY_LEVEL, type Projection, project } from "./project";
export { READY_COLUMNS, type ReadyPlants, type ReadyRow, readyPlants } from "./ready-plants";
export { isSilent } from "./silence";
export { type TaskWindow, taskWindow } from "./task-window";
