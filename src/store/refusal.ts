// Why a database cannot be opened or used.

/** One fact; its message is the sentence for whoever starts the process. */
export class StoreRefusal extends Error {
  readonly reason: "newer schema" | "damaged" | "migration failed" | "cannot open" | "other face" | "in use";
  constructor(reason: StoreRefusal["reason"], message: string, options?: ErrorOptions) {
    super(message, options);
    this.reason = reason;
  }
}
