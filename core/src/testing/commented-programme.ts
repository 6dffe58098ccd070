/** A programme file with comments, quotes, blank lines and brackets in every place where a coach may put them. */
export const COMMENTED_PROGRAMME = `# Harbour starters
stave: 1   # the shape
id: harbour
title: "Harbour starters"

version: 3
about:
  A first block for people
  who never trained.
"goal": general
status: novice
units: kg
weekly:
  # wide for now
  sets: {chest: 4–10, 'lats': 6–12} # two only
  gap: 48
  must: [
    chest, # the weak one
    lats,
  ]
phases:
  - key: base # first
    title: 'Base: learn'
    weeks: 4
    light: [4]

    # two sessions
    sessions:
      - key: a
        title: One
        minutes: 45
        warmup:
        - {do: cycle, dose: 5 min}   # easy
        - ramp: squat
          sets: 2
        work:
          # legs first
          - slot: squat
            pattern: squat
            first: goblet-squat
            dose: 3 × 8–10, rest 90 s   # slow down
            changes:
              - week: 3
                dose: "4 × 8"
            note: |
              Breathe.
              Stand tall.

          # then the upper body

          - pair:
              - slot: press
                # floor if the wrist hurts
                pattern: horizontal push
                first: push-up
                dose: 3 × 8
              - slot: row
                pattern: horizontal pull
                first: table-row
                dose: 3 × 10, 8, 8   # each as clean as the first
            restS: 60
      # the second
      - key: b
        title: Two
        minutes: 45
        work: []
        conditioning:
          -
            # or outdoors
            do: cycle
            dose: 1 × 10 min
            effort: steady
            or: [rowing-machine,
              brisk-walk]
          - { do: brisk-walk, # any way
              dose: 1 × 20 min,
              effort: easy }
# the end
`;
