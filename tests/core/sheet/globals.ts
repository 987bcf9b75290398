/** Everything of the language that a hostile text might change, by reference: compare two of them with toStrictEqual. */
export function globalsNow(): unknown {
  const all = Reflect.ownKeys(globalThis).map(String).sort();
  const prototypes = [
    Object.prototype,
    Array.prototype,
    Function.prototype,
    String.prototype,
    Number.prototype,
    Math,
    JSON,
    Reflect,
  ];
  return {
    all,
    members: prototypes.map((each) =>
      Reflect.ownKeys(each).map((key) => [key, Object.getOwnPropertyDescriptor(each, key)]),
    ),
    constructors: [Object, Array, Function, String, Number].map((each) =>
      Reflect.ownKeys(each).map((key): unknown => Reflect.get(each, key)),
    ),
    bare: Object.keys({}),
  };
}
