// What the face on the group's server says of its own accord.

export const faceWords = {
  menuName: "Log this message",
  moreActions: "More to choose from",
  nothing: "I found no reading and no work in that.",
  logged: "Logged.",
  sentDirectly: "I have written to you directly: it stays there, and you can go on with it whenever you like.",
  formLate: "That form could not be opened in time. Press the button again.",
  setUpByCommand:
    "Hello. I keep the group's motorcycles on their service schedule. Whoever manages this server sets me up with /group; every member begins with /bike add.",
  directClosed: "I have an answer for you alone, but your direct messages are closed to me. Open them, or ask with a command.",
} as const;
