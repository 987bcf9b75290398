// The library without a page: plans from requests, methods checked, scenarios side by side and what is asked of them; files,
// calendars and tables; what was done against what was planned.
export { builtInPlanner, createPlanner, planWeek } from './plan.js';
export type {
  CheckResult,
  ChecksRequest,
  ChecksWishes,
  Planner,
  DaySession,
  Notice,
  NoticeCode,
  Plan,
  PlanDerivation,
  PlanInputs,
  PlanLoad,
  PlanRequest,
  PlanRunning,
  PlanSeason,
  PlanStrength,
  PlanWeek,
  PlacedSession,
  RuleOutcome,
  RunningRequest,
  RunningWishes,
  SeasonChange,
  SeasonNotice,
  SeasonRequest,
  SeasonWeek,
  SeasonWishes,
  StrengthRequest,
  StrengthSession,
  StrengthWishes,
  WeekRequest,
  WeekWishes,
} from './plan.js';
export type { Outcome, Problem, ProblemCode } from './problem.js';
export type { Method } from './training/method/document.js';
export { foundations, tally } from './plan/basis/foundations.js';
export type { AreaId, Foundation } from './plan/basis/foundations.js';
export { answerIds, screen } from './training/checks/screening.js';
export type { AnswerId, Screening } from './training/checks/screening.js';
export { categoryIds, eventIds, levelIds, phaseIds } from './training/method/ids.js';
export type { CategoryId, EventId, LevelId, PhaseId, Status } from './training/method/ids.js';
export {
  copyScenario,
  makeReference,
  moveScenario,
  newSheet,
  removeRow,
  removeScenario,
  renameScenario,
  setFormula,
  setInputs,
  setOverride,
  setRow,
  setSeason,
  setSessions,
  switchRule,
} from './plan/scenarios/change.js';
export type { OwnRow, Scenario, ScenarioSheet } from './plan/scenarios/document.js';
export { beginHistory, record, redo, settle, undo } from './plan/scenarios/history.js';
export type { History } from './plan/scenarios/history.js';
export { influenceOnWeek, sweepWeek, workWeekBackwards } from './plan/scenarios/questions.js';
export { readScenarios } from './plan/scenarios/read-scenarios.js';
export { makeSeasonChange, moveSeasonStart, setSeasonWeek } from './plan/season/acts.js';
export { seasonSeries, seasonSummary, whenReached } from './plan/season/season-questions.js';
export type { Reached, SeasonOnShow, SeasonSummary } from './plan/season/season-questions.js';
export { ScenarioPlanner } from './plan/scenarios/scenario-planner.js';
export type { PlannedScenario } from './plan/scenarios/scenario-planner.js';
export { writeScenarios } from './plan/scenarios/write-scenarios.js';
export { writePlanFileText, readPlanFileText } from './exchange/plan-file.js';
export type { HandoutTexts, PlanFile, PlanFileDocument } from './plan/file/document.js';
export { calendarText } from './exchange/calendar/calendar-text.js';
export type { CalendarEvent, CalendarFile } from './exchange/calendar/calendar-event.js';
export { tableCsv } from './exchange/table-text.js';
export type { TableBlock } from './exchange/table-text.js';
export { weekPlanner } from './plan/record/planned-week.js';
export type { PlannedWeek, WeekPlanner } from './plan/record/planned-week.js';
export { addDone, doneInWeek, mergeDone, removeDone, replaceDone } from './plan/record/acts.js';
export { layRest } from './plan/record/lay-rest.js';
export { matchSessions } from './training/record/match-sessions.js';
export { tallyWeek } from './training/record/week-tally.js';
export type { DoneSession } from './training/record/done-session.js';
export { guessMapping } from './exchange/record/guess-mapping.js';
export { readSessions } from './exchange/record/read-sessions.js';
export { readTable } from './exchange/record/read-table.js';
export { writeSessions } from './exchange/record/write-sessions.js';
