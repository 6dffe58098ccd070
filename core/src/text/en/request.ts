/** What the page that asks a clinician says around its facts. */
export const request = {
  title: "Request for advice before exercise",
  to: "To the treating clinician",
  from: (by: string, on: string) => `From ${by}, coach, on ${on}`,
  person: (name: string, born: string) => `${name}, born ${born}`,
  asks: "What is asked",
  wants: (name: string, effort: string) =>
    `${name} wants to train at ${effort} effort. Some of what was answered asks for a clinician's view before that.`,
  why: "What caused the question",
  rule: (dated: string) =>
    `By the published logic of ${dated} (Riebe et al.) and the rules that are named. They say when to ask; nothing here is a diagnosis.`,
  answer: "Your answer",
  may: "May train at",
  efforts: {
    light: "light effort, such as easy walking",
    moderate: "moderate effort, such as brisk walking: breathing faster, talking is possible",
    vigorous: "vigorous effort: talking in short phrases only",
  },
  none: "not for now",
  limits: "Limits on loads, movements or positions, and until when",
  first: "To be looked at first",
  signed: "Date, name and signature",
  consent: (by: string, on: string, guardian: boolean) =>
    `${by}${guardian ? ", parent or guardian," : ""} agreed on ${on} that this page is shared with the clinician. Nothing else that was answered stands on it.`,
  caution: "The coach plans exercise and does not diagnose or treat. What you write here comes before any plan.",
} as const;
