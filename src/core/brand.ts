// Brands: two values of one shape that mean different things never mix by accident.

declare const brand: unique symbol;

/** `T`, marked as meaning `N`: it cannot be passed where another meaning is expected. */
export type Brand<T, N extends string> = T & { readonly [brand]: N };

/** Ends a chain of cases: a case that was forgotten does not compile. */
export function unreachable(value: never): never {
  throw new Error(`unhandled case: ${JSON.stringify(value)}`);
}
