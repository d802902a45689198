/** From one position to the next. */
export const round = {
  answering: "Who answers",
  wearing: "I am wearing them",
  facing: "they point, I face them",
  behind: "they point, I stand behind",
  cameFrom: (name: string) => `${name}: healthy`,
  lookAgain: "look again",
  otherwise: "Not now, not here, not in stereo",
  skip: (next: string) => `Skip, on to ${next}`,
  absent: "Nobody is here",
  back: "Somebody is here again",
  absentNow: "Nobody is here",
  absentMore: "Nobody is sent here, and the sheet says that it was not tested.",
  wants: "Wanted here",
  stereo: "stereo",
  stereoAfterAll: "no, stereo",
  feeds: { mono: "mono", "left ear": "all in the left ear", "right ear": "all in the right ear" },
  wantedSo: {
    mono: "Mono is wanted here: both ears get both sides.",
    "left ear": "All of it is wanted in the left ear here.",
    "right ear": "All of it is wanted in the right ear here.",
  },
};
