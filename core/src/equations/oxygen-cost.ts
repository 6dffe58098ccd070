import { REST_ML_KG_MIN } from "./pulse-target.ts";
import { MASS_KG, refuseMass, refuseOutside } from "./refuse.ts";

/** Metres a minute in one mile an hour, as the handbook rounds it. */
export const MPH_M_PER_MIN = 26.8;
/** Kilogram-metres a minute in one watt, as the handbook rounds it; physically 6.12. */
export const KGM_PER_WATT = 6;

/** A slope of more than a quarter is a stair. Ours. */
const STEEPEST = 0.25;

/**
 * The oxygen that level or uphill walking takes, at a steady pace.
 *
 *   mL/kg/min = 3.5 + 0.1 × speed + 1.8 × speed × grade
 *
 * @param mPerMin speed in metres a minute, 50 to 100 (3 to 6 km/h)
 * @param grade rise over run, 0 to 0.25
 * @returns mL of oxygen per kg and minute, gross
 * @throws RangeError outside the ranges
 * @source bushman2020
 * @example walkingOxygen(93.8, 0.1).toFixed(2) //=> "29.76"
 */
export function walkingOxygen(mPerMin: number, grade = 0): number {
  refuseOutside("the cost of walking", "speed in m/min", mPerMin, 50, 100);
  refuseOutside("the cost of walking", "grade as a fraction", grade, 0, STEEPEST);
  return REST_ML_KG_MIN + 0.1 * mPerMin + 1.8 * mPerMin * grade;
}

/**
 * The oxygen that running takes, at a steady pace. Meant for over 134 m/min (8 km/h), and used for jogging from 80.
 *
 *   mL/kg/min = 3.5 + 0.2 × speed + 0.9 × speed × grade
 *
 * @param mPerMin speed in metres a minute, 80 to 400
 * @param grade rise over run, 0 to 0.25
 * @returns mL of oxygen per kg and minute, gross
 * @throws RangeError outside the ranges
 * @source bushman2020
 * @example runningOxygen(160.8).toFixed(2) //=> "35.66"
 */
export function runningOxygen(mPerMin: number, grade = 0): number {
  refuseOutside("the cost of running", "speed in m/min", mPerMin, 80, 400);
  refuseOutside("the cost of running", "grade as a fraction", grade, 0, STEEPEST);
  return REST_ML_KG_MIN + 0.2 * mPerMin + 0.9 * mPerMin * grade;
}

/** runningOxygen turned round on the level: the speed in m/min that takes so much oxygen. @source bushman2020 */
export function runningSpeed(mlKgMin: number): number {
  refuseOutside("a running speed", "oxygen uptake in mL/kg/min", mlKgMin, 19.5, 83.5);
  return (mlKgMin - REST_ML_KG_MIN) / 0.2;
}

/**
 * The oxygen that pedalling takes, by legs or by arms.
 *
 *   legs: 7 + 1.8 × work / mass; arms: 3.5 + 3 × work / mass, work in kg·m/min
 *
 * @param kgmPerMin work rate in kilogram-metres a minute: legs 300 to 1200, arms 150 to 750 (a watt is 6 of them)
 * @param massKg body mass, 30 to 300 kg
 * @returns mL of oxygen per kg and minute, gross
 * @throws RangeError outside the ranges
 * @source bushman2020
 * @example pedallingOxygen("legs", 450, 62).toFixed(1) //=> "20.1"
 */
export function pedallingOxygen(by: "legs" | "arms", kgmPerMin: number, massKg: number): number {
  const [from, to] = by === "legs" ? [300, 1200] : [150, 750];
  refuseOutside(`the cost of pedalling by ${by}`, "work in kg·m/min", kgmPerMin, from, to);
  refuseMass(`the cost of pedalling by ${by}`, massKg);
  return by === "legs" ? 2 * REST_ML_KG_MIN + (1.8 * kgmPerMin) / massKg : REST_ML_KG_MIN + (3 * kgmPerMin) / massKg;
}

/**
 * The oxygen that stepping up and down takes.
 *
 *   mL/kg/min = 3.5 + 0.2 × steps + 1.33 × 1.8 × height × steps
 *
 * A later trial of 55 people printed 2.4 for the last constant and found a mean error of −0.6 and a standard error of 1.7
 * mL/kg/min.
 *
 * @param perMin steps a minute, 12 to 30
 * @param heightM height of the step, 0.04 to 0.40 m
 * @returns mL of oxygen per kg and minute, gross
 * @throws RangeError outside the ranges
 * @source bushman2020, latin2001
 * @example steppingOxygen(30, 0.3048).toFixed(1) //=> "31.4"
 */
export function steppingOxygen(perMin: number, heightM: number): number {
  refuseOutside("the cost of stepping", "steps a minute", perMin, 12, 30);
  refuseOutside("the cost of stepping", "height of the step in m", heightM, 0.04, 0.4);
  return REST_ML_KG_MIN + 0.2 * perMin + 1.33 * 1.8 * heightM * perMin;
}

/** @returns METs: how many times the oxygen of sitting still. @source bushman2020 */
export function metsOf(mlKgMin: number): number {
  refuseOutside("METs", "oxygen uptake in mL/kg/min", mlKgMin, 0, 100);
  return mlKgMin / REST_ML_KG_MIN;
}

/**
 * The energy that an activity takes.
 *
 *   kcal a minute = METs × 3.5 × mass / 200
 *
 * @param mets 0 to 30
 * @param massKg body mass, 30 to 300 kg
 * @returns kilocalories a minute, gross: what sitting still takes is in it
 * @throws RangeError outside the ranges
 * @source acsmGetp10
 * @example kcalPerMin(8, 70).toFixed(1) //=> "9.8"
 */
export function kcalPerMin(mets: number, massKg: number): number {
  refuseOutside("energy", "METs", mets, 0, 30);
  refuseOutside("energy", "body mass in kg", massKg, MASS_KG.from, MASS_KG.to);
  return (mets * REST_ML_KG_MIN * massKg) / 200;
}
