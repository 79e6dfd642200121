/** Where plants are lost: from stage to stage, by group and reason, with what they had cost. */

export {
  type BatchLosses,
  batchLosses,
  hasReasons,
  isLoss,
  LOSS_COLUMNS,
  type LossRow,
  type PlantsFate,
} from "./batch-losses";
