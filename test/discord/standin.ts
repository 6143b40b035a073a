// A loopback stand-in of the platform: its HTTP API and its gateway, good enough to believe, with bad days on demand.
// Everything sent to it is held against the published description; what is wrong is kept and makes the test fail.

import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { gatewayOn } from "./gateway.ts";
import { membersOf } from "./members.ts";
import { faultsOf, type RequestKind } from "./schemas.ts";
import { BODIES, bodyOf, CALLBACKS, type Call, type Fault, type Json, type Kept, ME, type Watcher } from "./wire.ts";

const SENDING = /^POST \/channels\/\d+\/messages$/u;
const GUILD = "900000000000000001";

export type StandIn = Awaited<ReturnType<typeof standIn>>;

/** @param from where the ids of what happens begin @param granted whether the message content privilege is granted @param token the only token that is good */
export async function standIn({
  granted = true,
  token = "good-token",
  guilds = 1,
  from = 1_000_000_000_000_000_000n,
}: {
  granted?: boolean;
  token?: string;
  guilds?: number;
  from?: bigint;
} = {}) {
  const calls: Call[] = [];
  const wrong: string[] = [];
  const asked: string[] = [];
  const closedHistory = new Set<string>();
  const managers = new Set<string>();
  const left = new Set<string>();
  const MANAGER = "300000000000000009";
  const messages: Kept[] = [];
  const faults: Fault[] = [];
  const nonces = new Map<string, Kept>();
  const uploads = new Map<string, Uint8Array>();
  const acknowledged = new Map<string, { type: number; at: number; flags: number }>();
  const interactions = new Map<string, { token: string; channel: string; at: number }>();
  let registered: readonly Json[] = [];
  let next = from;
  let watcher: Watcher | null = null;
  const id = (): string => String(next++);

  const guildIds = Array.from({ length: guilds }, (_, n) => String(BigInt(GUILD) + BigInt(n)));
  const channels = new Map<string, Json>();
  for (const guild of guildIds) {
    channels.set(`${guild}1`.slice(-19), { id: `${guild}1`.slice(-19), type: 0, guild_id: guild, name: "garage", permission_overwrites: [] });
    channels.set(`${guild}2`.slice(-19), { id: `${guild}2`.slice(-19), type: 0, guild_id: guild, name: "chatter", permission_overwrites: [] });
  }
  const user = (member: string, bot = false): Json => ({
    id: member,
    username: `rider${member.slice(-3)}`,
    global_name: `Rider ${member.slice(-3)}`,
    discriminator: "0",
    avatar: null,
    bot,
  });

  const guildOf = (guild: string): Json => ({
    ...{ id: guild, name: `Group ${guild.slice(-2)}`, owner_id: "200000000000000001", unavailable: false, member_count: 3, large: false, premium_tier: 0 },
    ...{
      roles: [
        { id: guild, name: "@everyone", permissions: "1071698660929", position: 0, color: 0, hoist: false, managed: false, mentionable: false },
        { id: MANAGER, name: "keepers", permissions: "32", position: 1, color: 0, hoist: false, managed: false, mentionable: false },
      ],
    },
    ...{ channels: [...channels.values()].filter((channel) => channel["guild_id"] === guild), emojis: [], features: [], stickers: [], threads: [] },
    ...{
      members: [{ user: user(ME, true), roles: [], joined_at: "2026-01-01T00:00:00Z", flags: 0 }],
      presences: [],
      voice_states: [],
      system_channel_id: `${guild}2`.slice(-19),
      stage_instances: [],
      guild_scheduled_events: [],
    },
  });

  const http: Server = createServer((request, response) => void answer(request, response));
  const gateway = gatewayOn({
    ...{ http, token, granted },
    ready: (session) => ({
      ...{ v: 10, user: user(ME, true), session_id: session },
      ...{ resume_gateway_url: address().replace("http", "ws"), application: { id: ME, flags: 0 } },
    }),
    guilds: () => guildIds.map(guildOf),
  });
  const { dispatch } = gateway;

  // ---- the HTTP API ------------------------------------------------------------------------------------------------
  async function answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const url = new URL(request.url ?? "", "http://stand-in");
    const path = decodeURIComponent(url.pathname.replace(/^\/api\/v10/u, ""));
    const method = request.method ?? "GET";
    const body = await bodyOf(request);
    const reply = (status: number, json: unknown, headers: Readonly<Record<string, string>> = {}): void => {
      calls.push({ method, path, body: body as Json, status, at: performance.now() });
      if (status === 204) response.writeHead(204, headers).end();
      else response.writeHead(status, { "content-type": "application/json", ...headers }).end(JSON.stringify(json));
    };
    asked.push(`${method} ${path}`);
    const fault = faults.find((each) => each.times > 0 && each.route.test(`${method} ${path}`));
    if (fault !== undefined && fault.spared > 0) fault.spared--;
    else if (fault !== undefined) {
      fault.times--;
      if (fault.how === "hang") return;
      if (fault.how === "slow") await new Promise((resolve) => setTimeout(resolve, 1000));
      else {
        if (fault.when === "after") route(method, path, body as Json, url.searchParams);
        if (fault.how === "cut") {
          request.socket.destroy();
          return;
        }
        const [status, json] = BODIES[fault.how];
        return reply(status, json, fault.how === "429" ? { "retry-after": "0.3", "x-ratelimit-scope": "user" } : {});
      }
    }
    // What members uploaded lies where no token is asked for.
    const upload = uploads.get(path.replace(/^\/uploads\//u, ""));
    if (upload !== undefined) return void response.writeHead(200, { "content-type": "application/octet-stream" }).end(upload);
    const authorised = request.headers.authorization === `Bot ${token}` || /^\/(interactions|webhooks)\//u.test(path);
    if (!authorised) return reply(401, { message: "401: Unauthorized", code: 0 });
    if (watcher !== null && SENDING.test(`${method} ${path}`)) return watched(watcher, response, () => route(method, path, body as Json, url.searchParams));
    reply(...route(method, path, body as Json, url.searchParams));
  }

  /** A message put into a channel, moment by moment. */
  async function watched(watch: Watcher, response: ServerResponse, work: () => Answered): Promise<void> {
    if (watch("arrived") === "lose") return void response.destroy();
    const [status, json] = work();
    watch("stored");
    const text = Buffer.from(JSON.stringify(json));
    response.writeHead(status, { "content-type": "application/json", "content-length": text.length });
    await new Promise<void>((resolve) => response.write(text.subarray(0, text.length / 2), () => resolve()));
    watch("half answered");
    await new Promise<void>((resolve) => response.end(text.subarray(text.length / 2), () => resolve()));
    watch("answered");
  }

  function check(kind: RequestKind, body: unknown, what: string): boolean {
    const found = faultsOf(kind, body);
    wrong.push(...found.map((fault) => `${what}: ${fault}`));
    return found.length === 0;
  }

  function keep(channel: string, body: Json, more: Json = {}): Kept {
    const made = {
      ...{
        id: id(),
        channel_id: channel,
        author: user(ME, true),
        content: String(body["content"] ?? ""),
        components: body["components"] ?? [],
        flags: body["flags"] ?? 0,
      },
      ...{
        attachments: [],
        embeds: [],
        mentions: [],
        mention_roles: [],
        mention_everyone: false,
        pinned: false,
        tts: false,
        type: 0,
        timestamp: "2026-11-25T10:00:00.000Z",
      },
      ...{ edited_timestamp: null, allowed_mentions: body["allowed_mentions"], message_reference: body["message_reference"], ...more },
    } as Kept;
    messages.push(made);
    const place = channels.get(channel);
    if (place !== undefined) place["last_message_id"] = made.id;
    return made;
  }

  type Answered = readonly [status: number, json: unknown];
  const UNKNOWN_CHANNEL: Answered = [404, { message: "Unknown Channel", code: 10_003 }];
  const ROUTES: readonly (readonly [RegExp, (found: readonly string[], body: Json, query: URLSearchParams) => Answered])[] = [
    [
      /^GET \/gateway\/bot$/u,
      () => [
        200,
        { url: address().replace("http", "ws"), shards: 1, session_start_limit: { total: 1000, remaining: 999, reset_after: 1, max_concurrency: 1 } },
      ],
    ],
    [
      /^PUT \/applications\/\d+\/commands$/u,
      (_found, body) => {
        registered = body as unknown as Json[];
        for (const command of registered) check("ApplicationCommandUpdateRequest", command, `command ${String(command["name"])}`);
        return [200, registered];
      },
    ],
    [/^POST \/interactions\/(\d+)\/[^/]+\/callback$/u, ([, interaction = ""], body) => callback(interaction, body)],
    [/^(PATCH|DELETE|GET) \/webhooks\/\d+\/([^/]+)\/messages\/@original$/u, ([, method = "", itsToken = ""], body) => original(method, itsToken, body)],
    [
      /^POST \/webhooks\/\d+\/([^/]+)$/u,
      ([, itsToken = ""], body) => {
        check("IncomingWebhookInteractionRequest", body, "further answer");
        const [of, interaction] = [...interactions].find(([, each]) => each.token === itsToken) ?? [];
        if (of === undefined || !acknowledged.has(of)) {
          wrong.push("a further answer before the first");
          return [404, { message: "Unknown Webhook", code: 10_015 }];
        }
        return [200, keep(interaction?.channel ?? "", body, { $token: itsToken, $interaction: true })];
      },
    ],
    [
      /^POST \/users\/@me\/channels$/u,
      (_found, body) => {
        check("CreatePrivateChannelRequest", body, "direct channel");
        return [200, directChannel(String(body["recipient_id"]))];
      },
    ],
    [/^GET \/channels\/(\d+)$/u, ([, channel = ""]) => (channels.has(channel) ? [200, channels.get(channel)] : UNKNOWN_CHANNEL)],
    [
      /^GET \/channels\/(\d+)\/messages\/(\d+)$/u,
      ([, channel, message]) => {
        const found = messages.find((each) => each.id === message && each.channel_id === channel);
        return found === undefined ? [404, { message: "Unknown Message", code: 10_008 }] : [200, found];
      },
    ],
    [/^GET \/channels\/(\d+)\/messages$/u, ([, channel = ""], _body, query) => history(channel, query)],
    [
      /^POST \/channels\/(\d+)\/messages$/u,
      ([, channel = ""], body) => {
        check("MessageCreateRequest", body, "message");
        const [recipient] = (channels.get(channel)?.["recipients"] ?? []) as { id: string }[];
        if (recipient !== undefined && left.has(recipient.id))
          return [403, { message: "Cannot send messages to this user due to having no mutual guilds", code: 50_278 }];
        const nonce = `${channel}/${String(body["nonce"])}`;
        const made = (body["enforce_nonce"] === true ? nonces.get(nonce) : undefined) ?? keep(channel, body);
        if (body["nonce"] !== undefined) nonces.set(nonce, made);
        return [200, made];
      },
    ],
    [/^PUT \/channels\/\d+\/messages\/\d+\/reactions\/[^/]+\/@me$/u, () => [204, null]],
    [
      /^GET \/guilds\/\d+\/members\/(\d+)$/u,
      ([, member = ""]) =>
        left.has(member)
          ? [404, { message: "Unknown Member", code: 10_007 }]
          : [200, { user: user(member), roles: managers.has(member) ? [MANAGER] : [], joined_at: "2026-01-01T00:00:00Z", flags: 0, deaf: false, mute: false }],
    ],
  ];
  function route(method: string, path: string, body: Json, query: URLSearchParams): Answered {
    for (const [pattern, work] of ROUTES) {
      const found = pattern.exec(`${method} ${path}`);
      if (found !== null) return work(found, body, query);
    }
    wrong.push(`no such route: ${method} ${path}`);
    return [404, { message: "404: Not Found", code: 0 }];
  }

  /** What was said after a message: the oldest of it, newest first, without nonces; nothing at all where the bot may not read back. */
  function history(channel: string, query: URLSearchParams): Answered {
    const place = channels.get(channel);
    if (place === undefined) return UNKNOWN_CHANNEL;
    const limit = Number(query.get("limit") ?? 50);
    if (limit < 1 || limit > 100) wrong.push(`${limit} messages asked for`);
    if (closedHistory.has(channel)) return [200, []];
    const after = BigInt(query.get("after") ?? 0);
    const said = messages.filter((each) => each.channel_id === channel && each.deleted !== true && each["$pending"] !== true && BigInt(each.id) > after);
    return [200, said.slice(0, limit).reverse()];
  }

  function original(method: string, itsToken: string, body: Json): Answered {
    const message = messages.find((each) => each["$token"] === itsToken && each["$original"] === true);
    if (message === undefined) return [404, { message: "Unknown Webhook", code: 10_015 }];
    if (method === "DELETE") {
      message.deleted = true;
      return [204, null];
    }
    if (method === "PATCH") {
      check("IncomingWebhookUpdateRequestPartial", body, "edit of an answer");
      Object.assign(message, body, { $pending: false });
    }
    return [200, message];
  }

  function directChannel(member: string): Json {
    const channel = `70000000${member.slice(-11)}`;
    const made = channels.get(channel) ?? { id: channel, type: 1, recipients: [user(member)], last_message_id: null };
    channels.set(channel, made);
    return made;
  }

  function callback(interaction: string, body: Json): Answered {
    const known = interactions.get(interaction);
    if (acknowledged.has(interaction)) return [400, { message: "Interaction has already been acknowledged.", code: 40_060 }];
    if (known === undefined || performance.now() - known.at > 3000) return [404, { message: "Unknown interaction", code: 10_062 }];
    const type = Number(body["type"]);
    const kind = CALLBACKS[type];
    if (kind === undefined) wrong.push(`a callback of type ${type}`);
    const data = (body["data"] ?? {}) as Json;
    const flags = Number(data["flags"] ?? 0);
    if (type !== 5 && type !== 6) check(kind ?? "CreateMessageInteractionCallbackRequest", body, "answer");
    // An announcement says only whether the answer will be the member's alone. Source: the platform's documentation, receiving and responding.
    else if (Object.keys(data).some((key) => key !== "flags") || (flags !== 0 && flags !== 64)) wrong.push(`an announcement with ${JSON.stringify(data)}`);
    acknowledged.set(interaction, { type, at: performance.now() - known.at, flags });
    if (type === 8 || type === 9) answers.set(interaction, data);
    else keep(known.channel, data, { $token: known.token, $original: true, $interaction: true, $pending: type === 5 || type === 6 });
    return [204, null];
  }
  const answers = new Map<string, Json>();

  await new Promise<void>((resolve) => http.listen(0, "127.0.0.1", resolve));
  const address = (): string => `http://127.0.0.1:${(http.address() as AddressInfo).port}`;

  const members = membersOf({ id, user, channels, interactions, uploads, granted, address, dispatch });

  return {
    api: `${address()}/api`,
    calls,
    /** How often a route was asked for, answered or not. */
    asked: (what: RegExp): number => asked.filter((each) => what.test(each)).length,
    wrong,
    messages,
    acknowledged,
    answers,
    guild: GUILD,
    guilds: guildIds,
    garage: `${GUILD}1`.slice(-19),
    chatter: `${GUILD}2`.slice(-19),
    registered: () => registered,
    ...gateway,
    directChannel: (member: string): string => String(directChannel(member)["id"]),
    /** The next `times` requests of a route fail, after `spared` that do not. */
    fault: (route: RegExp, how: Fault["how"], when: Fault["when"] = "before", times = 1, spared = 0) => void faults.push({ route, how, when, times, spared }),
    /** Who is told of each moment of putting a message into a channel; null: nobody. */
    watch: (who: Watcher | null) => {
      watcher = who;
    },
    /** The bad day is over. */
    recover: () => void faults.splice(0),
    ...members,
    /** The platform itself changes how a message shows, which is no edit of its author's. */
    embed: (message: Json) => dispatch("MESSAGE_UPDATE", { ...message, embeds: [], edited_timestamp: null }),
    /** A member may manage servers from now on, or no more. */
    promote: (member: string, manages: boolean) => void (manages ? managers.add(member) : managers.delete(member)),
    left: (member: string) => void left.add(member),
    /** Many messages deleted at once, as a moderator does. */
    removeAll: (all: readonly Json[]) =>
      dispatch("MESSAGE_DELETE_BULK", { ids: all.map(({ id: each }) => each), channel_id: all[0]?.["channel_id"], guild_id: all[0]?.["guild_id"] }),
    /** A server that its own outage hides, and that comes back whole. */
    hide: (guild: string) => dispatch("GUILD_DELETE", { id: guild, unavailable: true }),
    show: (guild: string) => dispatch("GUILD_CREATE", guildOf(guild)),
    /** The bot is sent away. */
    leave: (guild: string) => dispatch("GUILD_DELETE", { id: guild }),
    /** Others say so much that nothing is read of. */
    talkOn: (channel: string, count: number) => {
      for (let n = 0; n < count; n++) keep(channel, { content: `chatter ${n}` }, { author: user("200000000000000009"), $interaction: true });
    },
    /** The bot may no longer read what was said before in a channel. */
    closeHistory: (channel: string) => {
      closedHistory.add(channel);
      const place = channels.get(channel) ?? {};
      place["permission_overwrites"] = [{ id: place["guild_id"], type: 0, allow: "0", deny: String(1 << 16) }];
      dispatch("CHANNEL_UPDATE", place);
    },
    removeChannel: (channel: string) => {
      const place = channels.get(channel);
      channels.delete(channel);
      dispatch("CHANNEL_DELETE", place ?? {});
    },
    join: (guild: string) => {
      guildIds.push(guild);
      dispatch("GUILD_CREATE", guildOf(guild));
    },
    /** The platform remembers a nonce for some minutes only. */
    forgetNonces: () => nonces.clear(),
    async close(): Promise<void> {
      gateway.close();
      http.closeAllConnections();
      await new Promise((resolve) => http.close(resolve));
    },
  };
}
