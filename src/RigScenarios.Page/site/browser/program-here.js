// A page's first script where there is no server: from now on the library in this browser answers it. The page's own script
// comes after it.
import { useProgram } from "../shared/program.js";
import { tellLoading } from "./loading.js";
import { browserProgram } from "./program.js";

// The folder has the scripts in assets/, and the library in library/ beside it.
useProgram(browserProgram({ library: new URL("../../library/boot.js", import.meta.url).href, loading: tellLoading }));
