// What the boot script uses of the runtime's own module, which is there once the library is published for a browser.
declare module "*/_framework/dotnet.js" {
  interface Runtime {
    setModuleImports(name: string, imports: object): void;
    getAssemblyExports(assembly: string): Promise<any>;
  }

  interface Host {
    withResourceLoader(loader: (type: string, name: string) => Promise<Response> | null): Host;
    create(): Promise<Runtime>;
  }

  export const dotnet: Host;
}
