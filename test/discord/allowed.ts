// What discord.js itself puts into its requests although the published description does not name it there, one path a line.

import type { RequestKind } from "./schemas.ts";

export const ADDED_BY_THE_LIBRARY: { readonly [K in RequestKind]?: readonly string[] } = {
  MessageCreateRequest: ["message_reference.fail_if_not_exists", "tts", "attachments.title", "attachments.waveform", "attachments.duration_secs"],
  CreateMessageInteractionCallbackRequest: ["data.tts", "data.enforce_nonce", "data.nonce"],
  UpdateMessageInteractionCallbackRequest: ["data.tts", "data.enforce_nonce", "data.nonce"],
  IncomingWebhookUpdateRequestPartial: ["tts", "enforce_nonce", "nonce"],
  IncomingWebhookInteractionRequest: ["enforce_nonce", "nonce"],
};
