// Starts the library and says that it is there; the tests ask for the rest.
import { dotnet } from "./_framework/dotnet.js";

const { getAssemblyExports } = await dotnet.create();
const { Program } = await getAssemblyExports("RigScenarios.InBrowser");

globalThis.reference = {
  put: (path, base64) => Program.Put(path, Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))),
  answer: (name) => Program.Answer(name),
};
