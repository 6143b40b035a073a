// Options left out are left out, not there and undefined.

/** The same object without the fields that were not given. */
export function given<T extends Readonly<Record<string, unknown>>>(input: T): { readonly [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(input).filter(([, value]) => value !== undefined)) as { readonly [K in keyof T]?: Exclude<T[K], undefined> };
}
