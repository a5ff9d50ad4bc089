/** Names for numbers and texts that must not be mixed up. The key is a symbol nobody else can type, so a brand is only ever put on by its own constructor. */
declare const brand: unique symbol

export type Branded<Base, Name extends string> = Base & { readonly [brand]: Name }
