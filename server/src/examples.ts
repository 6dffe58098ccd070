const ROOM = "examples/ropewalk";
const STEPS = `${ROOM}/harbour-steps.yaml`;
const ROSTER = `--people ${ROOM}/people.yaml --places ${ROOM}/places.yaml --from 2027-01-11`;

/** What to try first with each command, on the files of the made-up room; its help ends with these lines. */
export const EXAMPLES: Readonly<Record<string, readonly string[]>> = {
  check: [
    `stave check ${ROOM}/bad-twin.yaml`,
    `stave check ${STEPS} --json`,
    `stave check ${STEPS} --places ${ROOM}/places.yaml --place customs-house-gym`,
    `stave check ${STEPS} --people ${ROOM}/people.yaml --places ${ROOM}/places.yaml --person wren`,
  ],
  fit: [
    `stave fit ${STEPS} ${ROSTER} --person dagny --reasons`,
    `stave fit ${STEPS} ${ROSTER} --person dagny --tests ${ROOM}/tests-dagny.yaml`,
    `stave fit ${STEPS} ${ROOM}/slipway-strength.yaml ${ROSTER} --out plans --workers 2`,
  ],
  cohort: [
    `stave cohort ${STEPS} --people ${ROOM}/followers.csv --places ${ROOM}/places.yaml --from 2027-01-11 --out cohort`,
  ],
  why: [
    `stave why ${STEPS} ground-squat-a ${ROSTER} --person tobiah`,
    `stave why ${STEPS} ground-squat-a ${ROSTER} --person tobiah --not back-squat`,
    `stave why ${STEPS} ground-squat-a ${ROSTER} --person tobiah --helps`,
  ],
  schedule: [
    `stave schedule ${STEPS} ${ROSTER} --person dagny --weeks 8`,
    `stave schedule ${STEPS} ${ROSTER} --person wren --missed 2027-01-13 --because busy`,
  ],
  sheet: [`stave sheet ${STEPS} ${ROSTER} --person dagny --out sheets --paper letter`],
  calendar: [
    `stave calendar ${STEPS} ${ROSTER} --person dagny --out calendars`,
    `stave calendar ${STEPS} ${ROSTER} --person wren --missed 2027-01-13 --because ill --out calendars`,
  ],
  exercises: [
    `stave exercises capstan --exercises ${ROOM}/own-exercises.yaml`,
    "stave exercises row",
    "stave exercises goblet-squat",
    'stave exercises --pattern "single leg"',
  ],
  import: [`stave import ${STEPS} ${ROSTER} --person dagny --coach "Imke Farrowdale" --data room`],
  record: [`stave record ${ROOM}/log.csv --data room`, `stave record ${ROOM}/log.csv --data room --take --leave-asked`],
  morning: ["stave morning --data room"],
  next: ["stave next --data room --person dagny"],
  export: ["stave export dagny --data room --out copies"],
  report: ["stave report dagny --data room --for clinician"],
  serve: ["stave serve --data room"],
  screen: [`stave screen ${ROOM}/screening-tobiah.yaml`, `stave screen ${ROOM}/screening-tobiah.yaml --request out`],
  before: [
    `stave before ${ROOM}/screening-tobiah.yaml ${ROOM}/before-tobiah.yaml`,
    `stave before ${ROOM}/screening-tobiah.yaml ${ROOM}/before-tobiah.yaml --rules ${ROOM}/before-rules.yaml --request out`,
  ],
  assess: [`stave assess ${ROOM}/tests-dagny.yaml`],
  replay: ["stave replay --data room", `stave replay ${ROOM}/rule-three-over.yaml --data room`],
  simulate: ["stave simulate matched --people 10", "stave simulate no-trend older --people 10 --seed 7 --json"],
  demo: ["stave demo --out out", "stave demo --serve"],
};
