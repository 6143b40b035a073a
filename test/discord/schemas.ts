// Every payload held against the platform's published description (discord-api-spec), and against the documented limits that it leaves out.

import { Ajv2020, type ValidateFunction } from "ajv/dist/2020.js";
// @ts-expect-error the package has no declarations for its zod schemas
import * as published from "discord-api-spec/zod";
import * as z from "zod";
import { ADDED_BY_THE_LIBRARY } from "./allowed.ts";

type Schemas = Readonly<Record<string, z.ZodType>>;
const SCHEMAS = published as unknown as Schemas;

/** What a request is, by the name of its schema in the published description. */
export type RequestKind =
  | "MessageCreateRequest"
  | "CreateMessageInteractionCallbackRequest"
  | "UpdateMessageInteractionCallbackRequest"
  | "ApplicationCommandAutocompleteCallbackRequest"
  | "ModalInteractionCallbackRequest"
  | "IncomingWebhookUpdateRequestPartial"
  | "IncomingWebhookInteractionRequest"
  | "ApplicationCommandUpdateRequest"
  | "CreatePrivateChannelRequest";

const ajv = new Ajv2020({ strict: false, allErrors: true, validateFormats: false });
const compiled = new Map<RequestKind, ValidateFunction>();

function validatorOf(kind: RequestKind): ValidateFunction {
  const ready = compiled.get(kind);
  if (ready !== undefined) return ready;
  const schema = SCHEMAS[`${kind}Schema`];
  if (schema === undefined) throw new Error(`the published description has no ${kind}`);
  const json = z.toJSONSchema(schema, {
    target: "draft-2020-12",
    io: "input",
    unrepresentable: "any",
    override: ({ jsonSchema }) => {
      if (jsonSchema.type === "object" && jsonSchema.properties !== undefined) jsonSchema.additionalProperties = false;
    },
  });
  const made = ajv.compile(json);
  compiled.set(kind, made);
  return made;
}

/** What is wrong with a request; empty when nothing is. */
export function faultsOf(kind: RequestKind, body: unknown): readonly string[] {
  const known = withoutAdditions(kind, body);
  const validate = validatorOf(kind);
  const published = validate(known)
    ? []
    : (validate.errors ?? []).map((error) => `${error.instancePath} ${error.message ?? ""} ${JSON.stringify(error.params)}`);
  return [...published, ...unpublished(kind, body)];
}

/** The library adds fields of its own that the description does not know, or knows in another type. */
function withoutAdditions(kind: RequestKind, body: unknown): unknown {
  const copy = structuredClone(body) as Record<string, unknown>;
  for (const path of ADDED_BY_THE_LIBRARY[kind] ?? []) drop(copy, path.split("."));
  if (kind === "ApplicationCommandUpdateRequest" && typeof copy["default_member_permissions"] === "string")
    copy["default_member_permissions"] = Number(copy["default_member_permissions"]);
  return copy;
}

function drop(at: unknown, [first, ...rest]: readonly string[]): void {
  if (first === undefined || typeof at !== "object" || at === null) return;
  if (Array.isArray(at)) for (const each of at) drop(each, [first, ...rest]);
  else if (rest.length === 0) delete (at as Record<string, unknown>)[first];
  else drop((at as Record<string, unknown>)[first], rest);
}

type Component = {
  readonly type: number;
  readonly custom_id?: string;
  readonly components?: readonly Component[];
  readonly component?: Component;
  readonly label?: string;
  readonly value?: string;
  readonly max_length?: number;
  readonly min_values?: number;
  readonly max_values?: number;
  readonly options?: readonly { readonly value: string }[];
};

/** Documented limits which the published schemas accept. Sources: message.mdx, components/reference.mdx, application-commands.mdx, receiving-and-responding.mdx. */
function unpublished(kind: RequestKind, body: unknown): readonly string[] {
  const found: string[] = [];
  const at = body as Record<string, unknown>;
  if (kind === "ApplicationCommandUpdateRequest") return commandFaults(at);
  const data = (kind.endsWith("CallbackRequest") ? at["data"] : at) as Record<string, unknown> | undefined;
  if (data === undefined) return found;
  const components = (data["components"] ?? []) as readonly Component[];
  if (kind === "ModalInteractionCallbackRequest") {
    if (components.length < 1 || components.length > 5) found.push(`a form of ${components.length} parts`);
    for (const { component } of components) {
      found.push(...listFaults(component));
      if (component?.type === 4 && component.value !== undefined && component.value.length > (component.max_length ?? 4000))
        found.push("a value longer than its field");
    }
    const ids = components.map((label) => label.component?.custom_id);
    if (new Set(ids).size !== ids.length) found.push("two fields of one name");
    return found;
  }
  if (kind === "ApplicationCommandAutocompleteCallbackRequest") return found;
  const content = String(data["content"] ?? "");
  if (content.length > 2000) found.push(`${content.length} characters of text`);
  const makes = kind === "MessageCreateRequest" || kind === "CreateMessageInteractionCallbackRequest" || kind === "IncomingWebhookInteractionRequest";
  if (makes && content.trim() === "" && components.length === 0) found.push("an empty message");
  if (components.length > 5) found.push(`${components.length} rows`);
  const ids: string[] = [];
  for (const row of components) {
    const inside = row.components ?? [];
    const buttons = inside.filter((each) => each.type === 2);
    if (buttons.length > 5 || (buttons.length > 0 && inside.length > buttons.length) || (buttons.length === 0 && inside.length !== 1))
      found.push("a row of the wrong make");
    for (const each of inside) {
      found.push(...listFaults(each));
      if (each.custom_id === undefined || each.custom_id.length < 1 || each.custom_id.length > 100)
        found.push(`a custom id of the wrong length: ${each.custom_id}`);
      ids.push(each.custom_id ?? "");
    }
  }
  if (new Set(ids).size !== ids.length) found.push(`two parts of one custom id: ${ids.join(", ")}`);
  return found;
}

/** A list offers at least as many choices as must be picked, and each value once. Source: components/reference.mdx, string select. */
function listFaults(list: Component | undefined): readonly string[] {
  if (list?.type !== 3) return [];
  const options = list.options ?? [];
  const [least, most] = [list.min_values ?? 1, list.max_values ?? 1];
  const found = [];
  if (options.length < 1 || options.length > 25) found.push(`a list of ${options.length}`);
  if (least > options.length || most > options.length || least > most) found.push(`${least} to ${most} of ${options.length}`);
  if (new Set(options.map(({ value }) => value)).size !== options.length) found.push("a value that is there twice");
  return found;
}

type CommandOption = { readonly name: string; readonly description?: string; readonly required?: boolean; readonly options?: readonly CommandOption[] };

function commandFaults(command: Record<string, unknown>): readonly string[] {
  const found: string[] = [];
  if (command["type"] === 3) return found;
  const walk = (options: readonly CommandOption[]): number => {
    const optional = options.findIndex((option) => option.required !== true);
    if (optional >= 0 && options.slice(optional).some((option) => option.required === true)) found.push("a required option behind one that is not");
    return options.reduce((sum, option) => sum + option.name.length + (option.description ?? "").length + walk(option.options ?? []), 0);
  };
  const names = [String(command["name"]), ...((command["options"] ?? []) as readonly CommandOption[]).map((option) => option.name)];
  for (const name of names) if (!/^[-_'\p{L}\p{N}]{1,32}$/u.test(name) || name !== name.toLowerCase()) found.push(`a name that is none: ${name}`);
  const total = walk((command["options"] ?? []) as readonly CommandOption[]) + String(command["name"]).length + String(command["description"]).length;
  if (total > 8000) found.push(`${total} characters in all`);
  return found;
}
