// The stand-in's gateway: sessions that can be resumed, parts of the groups served apart, and bad moments on demand.

import type { Server } from "node:http";
import { type WebSocket, WebSocketServer } from "ws";

type Json = Record<string, unknown>;
type Session = {
  readonly id: string;
  readonly part: number;
  readonly of: number;
  readonly sent: { readonly s: number; readonly t: string; readonly d: unknown }[];
  sequence: number;
  socket: WebSocket | null;
};

export type GatewayParts = {
  readonly http: Server;
  readonly token: string;
  readonly granted: boolean;
  /** What a session begins with. */
  readonly ready: (session: string) => Json;
  readonly guilds: () => readonly Json[];
};

/** The part that serves a group; direct messages are the first's. Source: the platform's documentation, gateway, sharding. */
const partOf = (guild: unknown, of: number): number => (typeof guild === "string" ? Number((BigInt(guild) >> 22n) % BigInt(of)) : 0);

export function gatewayOn({ http, token, granted, ready, guilds }: GatewayParts) {
  const server = new WebSocketServer({ server: http });
  let sessions: Session[] = [];
  let identifies = 0;
  let resumes = 0;
  let mute = false;
  const send = (session: Session, t: string, d: unknown): void => {
    const event = { op: 0, s: ++session.sequence, t, d };
    session.sent.push(event);
    session.socket?.send(JSON.stringify(event));
  };
  const guildIn = (t: string, d: Json): unknown => (t.startsWith("GUILD_") ? d["id"] : d["guild_id"]);
  const sockets = (): WebSocket[] => sessions.flatMap(({ socket }) => (socket === null ? [] : [socket]));

  function identify(socket: WebSocket, d: Json): void {
    identifies++;
    if (d["token"] !== token) return void socket.close(4004, "Authentication failed.");
    if (!granted && (Number(d["intents"]) & (1 << 15)) !== 0) return void socket.close(4014, "Disallowed intent(s).");
    const [part = 0, of = 1] = (d["shard"] ?? []) as number[];
    const session: Session = { id: `session-${identifies}`, part, of, sent: [], sequence: 0, socket };
    // Two processes that serve the same groups are both told: the platform does not mind.
    sessions = [...sessions, session];
    const mine = guilds().filter((guild) => partOf(guild["id"], of) === part);
    send(session, "READY", { ...ready(session.id), shard: [part, of], guilds: mine.map((guild) => ({ id: guild["id"], unavailable: true })) });
    for (const guild of mine) send(session, "GUILD_CREATE", guild);
  }

  function resume(socket: WebSocket, d: Json): void {
    resumes++;
    const session = sessions.find((each) => each.id === d["session_id"]);
    if (session === undefined) return void socket.send(JSON.stringify({ op: 9, d: false }));
    session.socket = socket;
    for (const event of session.sent.filter((each) => each.s > Number(d["seq"]))) socket.send(JSON.stringify({ op: 0, ...event }));
    socket.send(JSON.stringify({ op: 0, s: ++session.sequence, t: "RESUMED", d: {} }));
  }

  server.on("connection", (socket) => {
    socket.send(JSON.stringify({ op: 10, d: { heartbeat_interval: 400 } }));
    socket.on("close", () => {
      for (const session of sessions) if (session.socket === socket) session.socket = null;
    });
    socket.on("message", (raw) => {
      const { op, d } = JSON.parse(String(raw)) as { op: number; d: Json };
      if (op === 1 && !mute) socket.send(JSON.stringify({ op: 11 }));
      if (op === 2) identify(socket, d);
      if (op === 6) resume(socket, d);
    });
  });

  return {
    /** To whoever serves the group it happened in. */
    dispatch(t: string, d: Json): void {
      for (const session of sessions) if (partOf(guildIn(t, d), session.of) === session.part) send(session, t, d);
    },
    identifies: () => identifies,
    resumes: () => resumes,
    repeatLast(): void {
      for (const { socket, sent } of sessions) socket?.send(JSON.stringify({ op: 0, ...sent.at(-1) }));
    },
    drop(): void {
      for (const socket of sockets()) socket.terminate();
    },
    reconnect(): void {
      for (const socket of sockets()) socket.send(JSON.stringify({ op: 7 }));
    },
    invalidate(): void {
      const open = sockets();
      sessions = [];
      for (const socket of open) socket.send(JSON.stringify({ op: 9, d: false }));
    },
    /** The platform ends the line with a number. */
    end(code: number): void {
      for (const socket of sockets()) socket.close(code);
    },
    /** Heartbeats stay unanswered. */
    mute(on: boolean): void {
      mute = on;
    },
    close(): void {
      for (const socket of server.clients) socket.terminate();
      server.close();
    },
  };
}
