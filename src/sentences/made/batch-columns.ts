// Made by npm run sentences from the files of sentences; a test holds it equal.

export const batch = (): string => "Batch";

export const batches = (): string => "Batches";

export const between = (): string => "Stage not known";

export const by = (): string => "By";

export const caution = (): string => "Caution";

export const countedOn = (): string => "Counted on";

export const countHeld = (): string => "Count held";

export const culled = (): string => "Culled";

export const dayHeld = (): string => "Day held";

export const daysLate = (): string => "Days late";

export const dispatched = (): string => "Dispatched";

export const doneOn = (): string => "Done on";

export const doOn = (): string => "Do on";

export const fewest = (): string => "Fewest";

export const fewestByEnd = (): string => "Fewest by month end";

export const fewestReady = (): string => "Fewest ready";

export const from = (): string => "From";

export const given = (): string => "Given to batches";

export const gradedOut = (): string => "Graded out";

export const hours = (): string => "Hours";

export const lastCount = (): string => "Last counted";

export const lastStep = (): string => "Last step";

export const likely = (): string => "Likely";

export const likelyByEnd = (): string => "Likely by month end";

export const likelyCount = (): string => "Likely count";

export const likelyReady = (): string => "Likely ready";

export const lostLater = (): string => "Lost later";

export const method = (): string => "Method";

export const month = (): string => "Month";

export const most = (): string => "Most";

export const mostByEnd = (): string => "Most by month end";

export const mostReady = (): string => "Most ready";

export const nextBy = (): string => "Next by";

export const nextFrom = (): string => "Next from";

export const nextLikely = (): string => "Next likely";

export const nextStep = (): string => "Next step";

export const notComeUp = (): string => "Not come up";

export const notTaken = (): string => "Not taken";

export const place = (): string => "Place";

export const plants = (): string => "Plants";

export const plantsAre = (): string => "Plants are";

export const readyBy = (): string => "Ready by";

export const readyFrom = (): string => "Ready from";

export const readyLikely = (): string => "Ready likely";

export const recordedCount = (): string => "Recorded count";

export const recordedOn = (): string => "Recorded on";

export const remark = (): string => "Remark";

export const remarks = (): string => "Remark";

export const shouldStand = (): string => "Should stand";

export const started = (): string => "Started with";

export const status = (): string => "Status";

export const step = (): string => "Step";

export const task = (): string => "Task";

export const unexplained = (): string => "Unexplained";

export const variety = (): string => "Variety";

export const wasReady = (): string => "Was ready";

export const were = (): string => "Were";

export const headers = () => ({ batch: "Batch", batches: "Batches", between: "Stage not known", by: "By", caution: "Caution", countedOn: "Counted on", countHeld: "Count held", culled: "Culled", dayHeld: "Day held", daysLate: "Days late", dispatched: "Dispatched", doneOn: "Done on", doOn: "Do on", fewest: "Fewest", fewestByEnd: "Fewest by month end", fewestReady: "Fewest ready", from: "From", given: "Given to batches", gradedOut: "Graded out", hours: "Hours", lastCount: "Last counted", lastStep: "Last step", likely: "Likely", likelyByEnd: "Likely by month end", likelyCount: "Likely count", likelyReady: "Likely ready", lostLater: "Lost later", method: "Method", month: "Month", most: "Most", mostByEnd: "Most by month end", mostReady: "Most ready", nextBy: "Next by", nextFrom: "Next from", nextLikely: "Next likely", nextStep: "Next step", notComeUp: "Not come up", notTaken: "Not taken", place: "Place", plants: "Plants", plantsAre: "Plants are", readyBy: "Ready by", readyFrom: "Ready from", readyLikely: "Ready likely", recordedCount: "Recorded count", recordedOn: "Recorded on", remark: "Remark", remarks: "Remark", shouldStand: "Should stand", started: "Started with", status: "Status", step: "Step", task: "Task", unexplained: "Unexplained", variety: "Variety", wasReady: "Was ready", were: "Were" });
