/** An expected failure is a value that carries what its sentence needs. Bugs throw. */
export type Ok<Value> = { readonly ok: true; readonly value: Value }
export type Refused<Refusal> = { readonly ok: false; readonly refusal: Refusal }
export type Result<Value, Refusal> = Ok<Value> | Refused<Refusal>

export const ok = <Value>(value: Value): Ok<Value> => ({ ok: true, value })
export const refuse = <const Refusal>(refusal: Refusal): Refused<Refusal> => ({ ok: false, refusal })
