// Commands as the platform registers them. Sent only when they changed, since it allows 200 a day.

import { createHash } from "node:crypto";
import {
  type APIApplicationCommandBasicOption,
  ApplicationCommandOptionType,
  ApplicationCommandType,
  ApplicationIntegrationType,
  InteractionContextType,
  PermissionFlagsBits,
  type REST,
  type RESTPostAPIApplicationCommandsJSONBody,
  Routes,
} from "discord.js";
import type { RegisteredCommand, RegisteredOption } from "../chat/registration.ts";

/** What is kept of the last registration, so that the same one is not sent again. */
export type RegistrationMemory = { readonly last: () => Promise<string | null>; readonly keep: (mark: string) => Promise<void> };

/** @param menuName the message menu's entry ("Log this message") */
export function commandsJson(commands: readonly RegisteredCommand[], menuName: string): readonly RESTPostAPIApplicationCommandsJSONBody[] {
  const everywhere = {
    contexts: [InteractionContextType.Guild, InteractionContextType.BotDM],
    integration_types: [ApplicationIntegrationType.GuildInstall],
  };
  return [
    ...commands.map((command) => ({
      type: ApplicationCommandType.ChatInput as const,
      name: command.name,
      description: command.description,
      options:
        command.subcommands.length === 0
          ? command.options.map(optionJson)
          : command.subcommands.map((sub) => ({
              type: ApplicationCommandOptionType.Subcommand as const,
              name: sub.name,
              description: sub.description,
              options: sub.options.map(optionJson),
            })),
      ...(command.adminOnly ? { default_member_permissions: String(PermissionFlagsBits.ManageGuild) } : {}),
      ...everywhere,
    })),
    { type: ApplicationCommandType.Message, name: menuName, ...everywhere },
  ];
}

function optionJson(option: RegisteredOption): APIApplicationCommandBasicOption {
  const { name, description, required } = option;
  if (option.takes === "file") return { type: ApplicationCommandOptionType.Attachment, name, description, required };
  if (option.takes === "flag") return { type: ApplicationCommandOptionType.Boolean, name, description, required };
  const choices = option.choices.map((choice) => ({ name: choice, value: choice }));
  if (choices.length > 0) return { type: ApplicationCommandOptionType.String, name, description, required, choices };
  return { type: ApplicationCommandOptionType.String, name, description, required, autocomplete: option.completes };
}

/** Registers the commands of an application if they are not what they were. Answers whether they were sent. */
export async function registerChanged(
  rest: REST,
  application: string,
  commands: readonly RESTPostAPIApplicationCommandsJSONBody[],
  memory: RegistrationMemory,
): Promise<boolean> {
  const mark = createHash("sha256")
    .update(JSON.stringify([application, commands]))
    .digest("hex");
  if ((await memory.last()) === mark) return false;
  await rest.put(Routes.applicationCommands(application), { body: commands });
  await memory.keep(mark);
  return true;
}
