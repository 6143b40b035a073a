// What members do at the stand-in: commands, buttons, forms, files, and what they say, edit and delete.

import { type Json, ME, type Upload } from "./wire.ts";

type Place = { readonly member: string; readonly channel: string; readonly manages?: boolean };
/** What of the stand-in members' deeds reach into. */
type House = {
  readonly id: () => string;
  readonly user: (member: string, bot?: boolean) => Json;
  readonly channels: ReadonlyMap<string, Json>;
  readonly interactions: Map<string, { token: string; channel: string; at: number }>;
  readonly uploads: Map<string, Uint8Array>;
  /** Whether the bot may see the content of what is not addressed to it. */
  readonly granted: boolean;
  readonly address: () => string;
  readonly dispatch: (event: string, data: Json) => void;
};

const FIRST_EDIT = Date.parse("2026-11-25T10:05:00.000Z");

/** The deeds of members, each sent to the bot as the platform sends it. */
export function membersOf({ id, user, channels, interactions, uploads, granted, address, dispatch }: House) {
  let edits = 0;
  const memberOf = (member: string, manages: boolean): Json => ({
    ...{
      user: user(member),
      roles: [],
      joined_at: "2026-01-01T00:00:00Z",
      permissions: manages ? "1071698660961" : "1071698660929",
      flags: 0,
      deaf: false,
      mute: false,
    },
  });
  const interact = (type: number, data: Json, { member, channel, manages = false }: Place, more: Json = {}): string => {
    const interaction = id();
    const itsToken = `token-${interaction}`;
    interactions.set(interaction, { token: itsToken, channel, at: performance.now() });
    const place = channels.get(channel) ?? {};
    const who =
      place["guild_id"] === undefined
        ? { user: user(member) }
        : { member: memberOf(member, manages), guild_id: place["guild_id"], guild: { id: place["guild_id"] } };
    dispatch("INTERACTION_CREATE", {
      ...{
        id: interaction,
        application_id: ME,
        type,
        data,
        token: itsToken,
        version: 1,
        channel_id: channel,
        channel: place,
        locale: "en-GB",
        entitlements: [],
      },
      ...{
        authorizing_integration_owners: {},
        context: place["guild_id"] === undefined ? 1 : 0,
        attachment_size_limit: 10_485_760,
        app_permissions: "1071698660929",
        ...who,
        ...more,
      },
    });
    return interaction;
  };
  /** A file as a member's device hands it over: stored, and named in the interaction by where it lies. */
  const uploaded = ({ name, bytes, size }: Upload): Json => {
    const file = id();
    uploads.set(file, bytes);
    const url = `${address()}/uploads/${file}`;
    return { id: file, filename: name, size: size ?? bytes.length, url, proxy_url: url, content_type: "application/octet-stream", ephemeral: true };
  };
  const optionsOf = (options: Readonly<Record<string, string | boolean>>, focused?: string): Json[] =>
    Object.entries(options).map(([name, value]) => ({ name, type: typeof value === "boolean" ? 5 : 3, value, ...(name === focused ? { focused: true } : {}) }));
  const commandData = (name: string, sub: string | null, options: Json[]): Json => ({
    ...{ id: "1", name, type: 1 },
    options: sub === null ? options : [{ name: sub, type: 1, options }],
  });

  return {
    run: (place: Place, name: string, sub: string | null = null, options: Readonly<Record<string, string | boolean>> = {}) =>
      interact(2, commandData(name, sub, optionsOf(options)), place),
    /** A command with a file. */
    send: (place: Place, name: string, sub: string, option: string, file: Upload): string => {
      const attachment = uploaded(file);
      const key = String(attachment["id"]);
      return interact(2, { ...commandData(name, sub, [{ name: option, type: 11, value: key }]), resolved: { attachments: { [key]: attachment } } }, place);
    },
    type: (place: Place, name: string, option: string, typed: string) => interact(4, commandData(name, null, optionsOf({ [option]: typed }, option)), place),
    press: (place: Place, message: Json, customId: string) => interact(3, { custom_id: customId, component_type: 2 }, place, { message }),
    pick: (place: Place, message: Json, customId: string, values: readonly string[]) =>
      interact(3, { custom_id: customId, component_type: 3, values }, place, { message }),
    fill: (place: Place, customId: string, fields: Readonly<Record<string, string>>, picks: Readonly<Record<string, string>> = {}) =>
      interact(
        5,
        {
          custom_id: customId,
          components: [
            ...Object.entries(fields).map(([name, value], n) => ({ type: 18, id: n, component: { type: 4, id: 10 + n, custom_id: name, value } })),
            ...Object.entries(picks).map(([name, value], n) => ({
              type: 18,
              id: 20 + n,
              component: { type: 3, id: 30 + n, custom_id: name, values: [value] },
            })),
          ],
        },
        place,
      ),
    menu: (place: Place, message: Json) =>
      interact(
        2,
        { id: "2", name: "Log this message", type: 3, target_id: message["id"], resolved: { messages: { [String(message["id"])]: message } } },
        place,
      ),
    /** Says something; content is hidden from a bot without the privilege unless it is addressed. */
    say(
      { member, channel, manages = false }: Place,
      text: string,
      { mentions = false, bot = false, reply, more = {} }: { mentions?: boolean; bot?: boolean; reply?: Json; more?: Json } = {},
    ): Json {
      const place = channels.get(channel) ?? {};
      const guild = place["guild_id"];
      const visible = granted || mentions || guild === undefined;
      const { user: _user, ...there } = memberOf(member, manages);
      const message = {
        ...{
          id: id(),
          channel_id: channel,
          author: user(member, bot),
          content: visible ? text : "",
          timestamp: "2026-11-25T10:00:00.000Z",
          edited_timestamp: null,
          tts: false,
        },
        ...{
          mention_everyone: false,
          mentions: mentions ? [user(ME, true)] : [],
          mention_roles: [],
          attachments: [],
          embeds: [],
          pinned: false,
          type: 0,
          components: [],
          flags: 0,
        },
        ...(guild === undefined ? { channel_type: 1 } : { guild_id: guild, member: there }),
        ...(reply === undefined ? {} : { type: 19, message_reference: { message_id: reply["id"], channel_id: channel }, referenced_message: reply }),
        ...more,
      };
      dispatch("MESSAGE_CREATE", message);
      return message;
    },
    /** Each edit is a second after the one before; `again`: the platform tells of the latest one once more. */
    edit: (message: Json, text: string, again = false) =>
      dispatch("MESSAGE_UPDATE", {
        ...message,
        content: text,
        edited_timestamp: new Date(FIRST_EDIT + (again ? edits : ++edits) * 1000).toISOString(),
      }),
    remove: (message: Json) => dispatch("MESSAGE_DELETE", { id: message["id"], channel_id: message["channel_id"], guild_id: message["guild_id"] }),
    /** The platform tells of the same message again, as it may after a dropped line. */
    sayAgain: (message: Json) => dispatch("MESSAGE_CREATE", message),
  };
}
