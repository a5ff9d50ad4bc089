/** Appends to the list under a key. Folds build thousands of these; a fresh array each time would cost a sort's worth. */
export const gather = <Key, Value>(lists: Map<Key, Value[]>, key: Key, value: Value): void => {
  const list = lists.get(key)
  if (list) list.push(value)
  else lists.set(key, [value])
}
