// What whoever starts Tappet reads when it cannot start.

export const startWords = {
  noDiscordYet: (): string => "DISCORD_TOKEN is set, but this version has the terminal face only. Unset it to open the practice room.",
};
