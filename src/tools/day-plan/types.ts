/**
 * What a day plan is asked with and what it answers.
 *
 * Every instant is a whole number of seconds on one local axis: seconds of wall-clock time since midnight of
 * some day (1970-01-01 in `clock.ts`), so that the remainder by 86 400 is the time of day. Seconds, because
 * filling is counted at 20 s a macaron. The axis has no daylight saving: across a change of the clocks a plan
 * is an hour off.
 */

/**
 * When the baker is awake, in whole minutes of the day, 0 to 1440 each. `to` before `from` runs past
 * midnight; equal means always.
 */
export interface Waking {
  readonly from: number;
  readonly to: number;
}

/**
 * The lengths of the steps and the bench they are done on. Lengths are minutes, 0 to 10 080, to the nearest
 * second.
 */
export interface DaySettings {
  readonly weigh: number;
  readonly macaronage: number;
  /** One tray. */
  readonly pipe: number;
  /** One tray. */
  readonly rest: number;
  /** One tray. */
  readonly bake: number;
  readonly cool: number;
  /** One macaron, in seconds. */
  readonly fillEach: number;
  /** At least this long. */
  readonly mature: number;
  readonly box: number;
  /** To room temperature. */
  readonly warm: number;
  readonly awake: Waking;
  /** Trays that bake at the same time, 1 to 20. */
  readonly ovens: number;
  /** Shells go straight into the oven, whatever `rest` says. */
  readonly noRest: boolean;
}

/** The lengths when nothing else is set. Source: from memory, all of them settings. */
export const usualSettings: DaySettings = {
  weigh: 20,
  macaronage: 25,
  pipe: 10,
  rest: 30,
  bake: 15,
  cool: 30,
  fillEach: 20,
  mature: 24 * 60,
  box: 20,
  warm: 30,
  awake: { from: 7 * 60, to: 22 * 60 },
  ovens: 1,
  noRest: false,
};

/** One filling: minutes of hands to make it, then minutes in which it sets by itself. */
export interface DayFilling {
  readonly name: string;
  readonly handsMin: number;
  readonly setMin: number;
}

/** The fillings when none is named. Source: from memory, settings. */
export const usualFillings: readonly DayFilling[] = [
  { name: "Ganache", handsMin: 20, setMin: 45 },
  { name: "Buttercream", handsMin: 30, setMin: 0 },
];

/** A step that is over or running, with its true times in seconds on the axis. */
export interface DoneStep {
  readonly id: string;
  readonly start: number;
  readonly end: number;
}

/** What is to be ready, when, and what has been done toward it. Plain data, so that it can be stored. */
export interface DayOrder {
  /** 1 to 10 000. */
  readonly macarons: number;
  /** Shells that one tray holds, 1 to 1000; 30 when left out. */
  readonly shellsOnTray?: number;
  /** Trays, where they are known otherwise than from the shells; 1 to 2000. */
  readonly trays?: number;
  /** When it is needed, seconds. */
  readonly due: number;
  /** Nothing is planned before this, seconds. */
  readonly now: number;
  readonly settings: DaySettings;
  /** At most 10. */
  readonly fillings: readonly DayFilling[];
  /**
   * With a step, all that it comes after. Rests, cooling and setting may be left out: they go by themselves.
   */
  readonly done?: readonly DoneStep[];
}

/**
 * One step of a plan, seconds on the axis. The ids are `weigh`, `macaronage`, `pipe-1`, `rest-1`, `bake-1`,
 * `cool-1` and so on by tray, `filling-1`, `set-1` and so on by filling, `fill`, `mature`, `box`, `warm`.
 */
export interface DayStep extends DoneStep {
  readonly name: string;
  /** True when it takes the baker's hands from start to end. */
  readonly hands: boolean;
  /**
   * For what goes by itself: when the step before it ends, at or before `start`. A tray cools from the moment
   * it is out; `start` is the latest that would do.
   */
  readonly from?: number;
}

/**
 * The one plan that starts latest with every step as late as it can be, steps in the order in which they
 * start.
 */
export interface DayPlan {
  readonly fits: true;
  readonly start: number;
  readonly ready: number;
  readonly steps: readonly DayStep[];
}

/** No plan keeps every rule; this is what would. */
export interface DayImpossible {
  readonly fits: false;
  /**
   * The earliest it can be ready when work goes on from `now`; absent when it never can (a step longer than a
   * waking day).
   */
  readonly readyAt?: number;
  /** The most macarons that would be ready in time, 0 for none; absent once a step is done. */
  readonly most?: number;
  /** Whether leaving out the rest, and nothing else, would make it fit. */
  readonly noRestFits: boolean;
}
