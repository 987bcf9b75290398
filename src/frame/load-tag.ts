/**
 * Loads the script of the tag from the folder of the page.
 *
 * Modules have to be fetched with the origin of the page. A sandbox without `allow-same-origin` has none, and few servers
 * answer that: there the single file comes instead, as a classic script, which any page may load.
 *
 * @returns a promise that rejects where the script does not come.
 */
export function loadTag(): Promise<void> {
  const script = document.createElement('script');
  const isModule = self.origin !== 'null';
  if (isModule) script.type = 'module';
  const address = new URL(isModule ? './weekwright.js' : './weekwright.single.js', location.href);
  setAddress(script, address.href);
  return new Promise((resolve, reject) => {
    script.addEventListener('load', () => {
      resolve();
    });
    script.addEventListener('error', () => {
      reject(new Error(`${address.href} did not load`));
    });
    document.head.append(script);
  });
}

/** The page trusts addresses of scripts only by a policy. TypeScript does not know of them. */
function setAddress(script: HTMLScriptElement, address: string): void {
  const factory: unknown = Reflect.get(globalThis, 'trustedTypes');
  const policy = call(factory, 'createPolicy', ['weekwright-embed', { createScriptURL: (text: string) => text }]);
  Reflect.set(script, 'src', call(policy, 'createScriptURL', [address]) ?? address);
}

function call(object: unknown, name: string, values: readonly unknown[]): unknown {
  if (typeof object !== 'object' || object === null) return undefined;
  const method: unknown = Reflect.get(object, name);
  return typeof method === 'function' ? Reflect.apply(method, object, values) : undefined;
}
