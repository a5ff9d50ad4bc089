/** The library's own types know the system's bus only. What is used here, as its source has it. */
export type Bus = {
  readonly requestName: (name: string, flags: number, done: (error: unknown) => void) => void
  readonly setMethodCallHandler: (
    path: string,
    face: string,
    method: string,
    answer: readonly [how: (...given: never[]) => unknown, signature: string],
  ) => void
  readonly sendSignal: (path: string, face: string, name: string, signature: string, body: readonly unknown[]) => void
  readonly connection: { readonly end: () => void }
}
declare module '@homebridge/dbus-native' {
  export const sessionBus: (options: { readonly busAddress: string }) => Bus
}
